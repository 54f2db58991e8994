import type { Nm } from '../lengths/nanometres.ts';
import { sizeById } from '../sizes/catalogue.ts';
import { contentsDefaults as defaults } from './defaults.ts';

/** The papers of one set, every length in nanometres. */
export interface SetPapers {
  readonly item: {
    /** A published size, which may be one that nobody folds. */
    readonly size?: string | undefined;
    readonly form?: 'folded' | 'flat' | undefined;
    readonly caliper?: Nm | undefined;
    readonly mats?: readonly Nm[] | undefined;
    readonly raised?: Nm | undefined;
  };
  readonly envelope?: { readonly caliper?: Nm | undefined; readonly lining?: Nm | undefined } | undefined;
  readonly thickness?: Nm | undefined;
  readonly packing?: 'pressed' | 'loose' | undefined;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const usualForm = (size: string | undefined): 'folded' | 'flat' =>
  size !== undefined && sizeById(size)?.flat ? 'flat' : 'folded';

/**
 * What one set adds to a closed stack, in whole nanometres: paper layers times the packing factor, and
 * raised decoration less what pressing takes. A measured thickness is taken as it is.
 */
export function setThickness(set: SetPapers): Nm {
  if (set.thickness !== undefined) return set.thickness;
  const { item, envelope } = set;
  const card = defaults.layers[item.form ?? usualForm(item.size)] * (item.caliper ?? defaults.cardCaliper);
  const mats = sum(item.mats ?? []);
  const cover = envelope
    ? defaults.envelopeLayers * (envelope.caliper ?? defaults.envelopeCaliper) + (envelope.lining ?? 0)
    : 0;
  const sheets = (card + mats + cover) * defaults.packing[set.packing ?? 'pressed'];
  return Math.round(sheets + (item.raised ?? 0) * (1 - defaults.raisedSquash));
}

/** The folder around a stack. */
export interface Binding {
  /** Layers of the folder's own sheet between its two outer faces. */
  readonly layers: number;
  readonly caliper: Nm;
  readonly ease: Nm;
}

/**
 * Distance between the two spine scores for a stack, in nanometres: each 90° fold hinges at mid-sheet, so of
 * n layers n − 1 count.
 * Source: the carton engineers' inside dimension rule; common practice for folders.
 */
export const spineFor = (stack: Nm, { layers, caliper, ease }: Binding): Nm =>
  stack + (layers - 1) * caliper + ease;

/** How many sets of a thickness a spine holds; the inverse of {@link spineFor}. Never negative. */
export function setsThatFit(spine: Nm, set: Nm, binding: Binding): number {
  const free = spine - spineFor(0, binding);
  return free <= 0 ? 0 : Math.floor(free / set);
}
