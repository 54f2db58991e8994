import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const clipper = 'clipper2-ts';

/** What the core imports of the package, apart from types. */
function namesUsed(projectFolder) {
  const statement = /^import \{([^}]*)\} from 'clipper2-ts';/gmu;
  const names = globSync('shared/**/*.ts', { cwd: projectFolder }).flatMap((file) =>
    [...readFileSync(join(projectFolder, file), 'utf8').matchAll(statement)].flatMap(([, list]) =>
      list.split(',').map((name) => name.trim()),
    ),
  );
  return [...new Set(names)].filter((name) => name !== '' && !name.startsWith('type ')).sort();
}

/**
 * Everybody but the stand-in imports the stand-in, whose exports are the package's own once it was loaded: exports of
 * a module are bindings, and no copies.
 */
export function clipperLater(root, projectFolder) {
  const standIn = join(root, 'ask', 'clipper-later.ts');
  const names = namesUsed(projectFolder).join(', ');
  return {
    name: 'clipper-later',
    enforce: 'pre',
    resolveId: (source, importer) =>
      source === clipper && importer !== undefined && importer !== standIn ? standIn : null,
    load: (id) =>
      id === standIn
        ? [
            `export let ${names};`,
            'let loading;',
            `const load = async () => { ({ ${names} } = await import('${clipper}')); };`,
            'export const loadClipper = () => {',
            '  loading ??= load().catch((error) => { loading = undefined; throw error; });',
            '  return loading;',
            '};',
          ].join('\n')
        : null,
  };
}
