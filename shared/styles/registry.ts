import type { Style } from './style.ts';
import { twinSleeve } from './twin-sleeve/index.ts';
import { type TwinSleeveSpec, twinSleeveSpec } from './twin-sleeve/spec.ts';

/** Every style with its spec: adding a style is a folder beside this file and a line in each list. */
export const styleSpecs = [twinSleeveSpec] as const;

export const styles: readonly Style<FolderSpec>[] = Object.freeze([twinSleeve]);

export type FolderSpec = TwinSleeveSpec;

/** The style that a spec names. */
export function styleOf(spec: FolderSpec): Style<FolderSpec> {
  const style = styles.find(({ name }) => name === spec.style);
  if (!style) throw new Error(`no style is called ${spec.style}`);
  return style;
}
