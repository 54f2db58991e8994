import { buildPage } from '../../src/page/build/build-page.mjs';
import { builtFolder, builtFrom, fingerprint } from '../../src/page/build/project.mjs';

/** The page as it is built from the sources of now. */
export async function ensurePage(): Promise<string> {
  if (builtFrom() !== fingerprint()) await buildPage();
  return builtFolder;
}
