import { bellyBandCase } from './belly-band.ts';
import { cardBaseCase } from './card-base.ts';
import { envelopeCase } from './envelope.ts';
import { fourFlapWrapCase } from './four-flap-wrap.ts';
import { gateWalletCase } from './gate-wallet.ts';
import { insertCase } from './insert.ts';
import { pocketFolderCase } from './pocket-folder.ts';
import { slipSleeveCase } from './slip-sleeve.ts';
import type { StyleCase } from './style-case.ts';
import { tagCase } from './tag.ts';
import { tuckBoxCase } from './tuck-box.ts';
import { twinSleeveCase } from './twin-sleeve.ts';

/** One case for every style. */
export const styleCases: readonly StyleCase[] = [
  twinSleeveCase,
  pocketFolderCase,
  slipSleeveCase,
  gateWalletCase,
  fourFlapWrapCase,
  bellyBandCase,
  tuckBoxCase,
  envelopeCase,
  cardBaseCase,
  tagCase,
  insertCase,
];
