import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { clipperLater } from './clipper-later.mjs';
import { withoutDescriptions } from './without-descriptions.mjs';

const assets = 'assets';

/** Names that a module exports. */
const exportsOf = (code) => [
  ...[...code.matchAll(/^export (?:async )?(?:function|const|let|class) (\w+)/gmu)].map(([, name]) => name),
  ...[...code.matchAll(/^export \{([^}]*)\}/gmu)].flatMap(([, list]) =>
    list.split(',').map((each) =>
      each
        .trim()
        .split(/\s+as\s+/u)
        .at(-1),
    ),
  ),
];

/** What makes JSON Schema of zod's schemas hangs on each of them; the page only reads with them, and leaves it out. */
const withoutJsonSchema = () => ({
  name: 'without-json-schema',
  enforce: 'pre',
  transform: (code, id) =>
    /zod\/v4\/core\/(?:to-json-schema|json-schema-processors)\.js$/u.test(id)
      ? {
          code: [
            "const leftOut = () => () => { throw new Error('the page makes no JSON Schema'); };",
            `export { ${exportsOf(code)
              .map((name) => `leftOut as ${name}`)
              .join(', ')} };`,
          ].join('\n'),
          map: null,
        }
      : null,
});

/**
 * How the page is built: one script, one style sheet, the worker that solves, and what is loaded on demand.
 * @param {string} outDir
 * @param {string} projectFolder
 * @returns {import('vite').InlineConfig}
 */
export function pageConfig(outDir, projectFolder) {
  const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'));
  const root = join(projectFolder, 'src', 'page');
  // what is loaded later may take from what is there already: fewer files, and smaller
  const options = { checks: { pluginTimings: false }, preserveEntrySignatures: 'allow-extension' };
  const plugins = () => [
    clipperLater(root, projectFolder),
    withoutJsonSchema(),
    withoutDescriptions(join(projectFolder, 'shared')),
  ];
  return {
    configFile: false,
    root,
    plugins: plugins(),
    base: './',
    publicDir: false,
    logLevel: 'warn',
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
      rolldownOptions: options,
    },
    worker: { format: 'es', plugins, rolldownOptions: options },
  };
}
