import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { clipperLater } from './clipper-later.mjs';
import { smallerZod } from './smaller-zod.mjs';
import { withoutDescriptions } from './without-descriptions.mjs';

const assets = 'assets';

/**
 * How the page is built: one script, one style sheet, the worker that solves, and what is loaded on demand.
 * @param {string} outDir
 * @param {string} projectFolder
 * @returns {import('vite').InlineConfig}
 */
export function pageConfig(outDir, projectFolder) {
  const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'));
  const root = join(projectFolder, 'src', 'page');
  // all that is loaded at once is one file, which what is loaded later may take from: fewer files, and smaller
  const options = (name) => ({
    checks: { pluginTimings: false },
    preserveEntrySignatures: 'allow-extension',
    output: { codeSplitting: { groups: [{ name, tags: ['$initial'] }] } },
  });
  const plugins = () => [
    clipperLater(root, projectFolder),
    smallerZod(),
    withoutDescriptions(join(projectFolder, 'shared')),
  ];
  return {
    configFile: false,
    root,
    plugins: plugins(),
    base: './',
    publicDir: false,
    logLevel: 'error',
    define: { __HEMFOLD_VERSION__: JSON.stringify(version) },
    build: {
      outDir,
      emptyOutDir: true,
      assetsDir: assets,
      target: 'es2023',
      // a strict content policy knows no inline script, data address or preload helper with styles
      modulePreload: { polyfill: false },
      assetsInlineLimit: 0,
      reportCompressedSize: false,
      chunkSizeWarningLimit: 800,
      rolldownOptions: options('page'),
    },
    worker: { format: 'es', plugins, rolldownOptions: options('core') },
  };
}
