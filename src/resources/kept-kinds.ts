import { keptConvention } from '../../shared/kept/kept-convention.ts';
import { keptCutter } from '../../shared/kept/kept-cutter.ts';
import { keptDesign } from '../../shared/kept/kept-design.ts';
import { keptStock } from '../../shared/kept/kept-stock.ts';
import type { Kind } from '../store/store.ts';

/** What is kept under names, as its routes tell it. */
export const keptKinds = {
  conventions: { noun: 'convention', id: 'Convention', ids: 'Conventions', body: keptConvention },
  cutters: { noun: 'cutter', id: 'Cutter', ids: 'Cutters', body: keptCutter },
  stock: { noun: 'paper', id: 'Paper', ids: 'Papers', body: keptStock },
  designs: { noun: 'design', id: 'Design', ids: 'Designs', body: keptDesign },
} as const satisfies Record<Kind, unknown>;
