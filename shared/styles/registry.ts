import type { z } from 'zod';
import { bellyBand } from './belly-band/index.ts';
import { cardBase } from './card-base/index.ts';
import { envelope } from './envelope/index.ts';
import { fourFlapWrap } from './four-flap-wrap/index.ts';
import { gateWallet } from './gate-wallet/index.ts';
import { insert } from './insert/index.ts';
import { pocketFolder } from './pocket-folder/index.ts';
import { slipSleeve } from './slip-sleeve/index.ts';
import type { Style } from './style.ts';
import { tag } from './tag/index.ts';
import { tuckBox } from './tuck-box/index.ts';
import { twinSleeve } from './twin-sleeve/index.ts';

/** Every style: adding one is a folder beside this file, its import, and a line here. */
const all = [
  twinSleeve,
  pocketFolder,
  slipSleeve,
  gateWallet,
  fourFlapWrap,
  bellyBand,
  tuckBox,
  envelope,
  cardBase,
  tag,
  insert,
] as const;

type SpecsOf<Styles extends readonly { readonly spec: unknown }[]> = {
  readonly [Index in keyof Styles]: Styles[Index]['spec'];
};

/** The schema of every style's spec. */
export const styleSpecs = all.map(({ spec }) => spec) as unknown as SpecsOf<typeof all>;

export type FolderSpec = z.output<(typeof styleSpecs)[number]>;

export const styles: readonly Style<FolderSpec>[] = Object.freeze([...all]);

/** The style that a spec names. */
export function styleOf(spec: FolderSpec): Style<FolderSpec> {
  const style = styles.find(({ name }) => name === spec.style);
  if (!style) throw new Error(`no style is called ${spec.style}`);
  return style;
}
