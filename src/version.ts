import { existsSync, readFileSync } from 'node:fs';

/** The folder with `package.json`: the parent of `src`, or one further up once compiled into `dist`. */
function packageFile(from: URL): URL {
  const here = new URL('package.json', from);
  const above = new URL('..', from);
  if (existsSync(here)) return here;
  if (above.href === from.href) throw new Error('package.json is missing above the running program');
  return packageFile(above);
}

const { version } = JSON.parse(readFileSync(packageFile(new URL('.', import.meta.url)), 'utf8')) as {
  readonly version: string;
};

/** hemfold's own version, as in package.json. */
export const hemfoldVersion: string = version;
