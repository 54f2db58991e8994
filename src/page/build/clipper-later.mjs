import { globSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

const standInOf = '\0clip-later:';
const everything = '\0clip';

/** Values that a module exports. */
const exportsOf = (file) =>
  [...readFileSync(file, 'utf8').matchAll(/^export (?:const|function) (\w+)/gmu)].map(([, name]) => name);

/**
 * Everybody outside of `shared/geometry/clip/` imports stand-ins for its modules, whose exports are the modules' own
 * once they were loaded: exports of a module are bindings, and no copies.
 */
export function clipperLater(root, projectFolder) {
  const loader = join(root, 'ask', 'clipper-later.ts');
  const folder = join(projectFolder, 'shared', 'geometry', 'clip');
  const modules = globSync('*.ts', { cwd: folder }).sort();
  const standIn = (module) => {
    const names = exportsOf(join(folder, module)).join(', ');
    return `export let ${names};\nexport const fill = (loaded) => { ({ ${names} } = loaded); };`;
  };
  const load = [
    ...modules.map((module, at) => `import { fill as fill${at} } from '${standInOf}${module}';`),
    'let loading;',
    `const load = async () => { const { all } = await import('${everything}');`,
    ...modules.map((_, at) => `fill${at}(all[${at}]);`),
    '};',
    'export const loadClipper = () => {',
    '  loading ??= load().catch((error) => { loading = undefined; throw error; });',
    '  return loading;',
    '};',
  ].join('\n');
  const all = [
    ...modules.map((module, at) => `import * as module${at} from '${join(folder, module)}';`),
    `export const all = [${modules.map((_, at) => `module${at}`).join(', ')}];`,
  ].join('\n');
  return {
    name: 'clipper-later',
    enforce: 'pre',
    resolveId: (source, importer) => {
      if (source === everything || source.startsWith(standInOf)) return source;
      if (importer === undefined || !source.startsWith('.')) return null;
      const file = normalize(join(dirname(importer), source));
      return dirname(file) === folder && dirname(importer) !== folder
        ? `${standInOf}${file.slice(folder.length + 1)}`
        : null;
    },
    load: (id) => {
      if (id === everything) return all;
      if (id === loader) return load;
      return id.startsWith(standInOf) ? standIn(id.slice(standInOf.length)) : null;
    },
  };
}
