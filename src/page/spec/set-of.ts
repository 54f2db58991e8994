import type { Addressed } from './address.ts';
import { isObject, type Json, type Spec, valueAt, withValue } from './pointer.ts';

/** What a plan tells of the sheet and of every size, as far as a set needs it. */
interface PlanForSet {
  readonly sheet: {
    /** What people call it, where it has a published size or a name. */
    readonly title: string;
    readonly size?: string | undefined;
    readonly width: { readonly mm: number };
    readonly height: { readonly mm: number };
    readonly turned: boolean;
  };
  readonly knockouts?: { readonly pieces: readonly { readonly name: string }[] } | undefined;
}

const omit = (spec: Spec, ...members: readonly string[]): Spec =>
  Object.fromEntries(Object.entries(spec).filter(([member]) => !members.includes(member)));

const millimetres = (length: unknown): number | undefined =>
  typeof length === 'object' && length !== null && 'mm' in length && typeof length.mm === 'number'
    ? length.mm
    : undefined;

/** The sheet as it lies, which a paper of a set cannot be said to be turned for. */
const asItLies = ({ sheet: { width, height, turned } }: PlanForSet): Spec => ({
  width: `${turned ? height.mm : width.mm} mm`,
  height: `${turned ? width.mm : height.mm} mm`,
});

/** The paper of a set. Of one that lies turned its print would be taken to run up along the wrong side. */
function paperOf({ stock }: Spec, plan: PlanForSet): Spec {
  const asked = isObject(stock) ? omit(stock, 'turned') : {};
  const { size, title, turned } = plan.sheet;
  if (turned)
    return {
      ...(size === undefined ? {} : { name: title }),
      ...omit(asked, 'size', 'width', 'height', 'oneWay', 'printPair'),
      ...asItLies(plan),
    };
  if (isObject(stock)) return asked;
  return size === undefined ? asItLies(plan) : { size };
}

/** Another paper of the same size, of which nothing else is known. @param name in the reader's words */
function secondPaper(first: Spec, name: string): Spec {
  const measures = Object.entries(first).filter(([member]) => ['size', 'width', 'height'].includes(member));
  return { name: first.name === name ? `${name} 2` : name, ...Object.fromEntries(measures) };
}

interface SetWish {
  readonly kits: number;
  /** JSON Pointers of the sizes that a spec of this style can fix. */
  readonly lengths: readonly string[];
  /** What to call the paper of inlays and frames. */
  readonly second: string;
}

const folder = 'folder';

/**
 * Several folders like the one on the table, for `/v1/sets/sheets`, with what is cut from another paper for each: every
 * size of the folder is fixed, so that the set's is this one.
 */
export function setOf(
  { spec, swapped }: Addressed,
  plan: PlanForSet,
  { kits, lengths, second }: SetWish,
): Spec {
  const make = lengths.reduce(
    (made, path) => {
      const size = millimetres(valueAt(plan as unknown as Json, path));
      return size === undefined || size === 0 ? made : withValue(made, path, `${size} mm`);
    },
    omit(spec, 'stock', 'cutter', 'convention'),
  );
  const paper = paperOf(spec, plan);
  const mayNotTurn = plan.sheet.turned && valueAt(spec, '/stock/oneWay') === true;
  const others = plan.knockouts?.pieces ?? [];
  return {
    kits,
    ...(spec.units === undefined ? {} : { units: spec.units }),
    pieces: [
      {
        name: folder,
        make,
        ...(mayNotTurn ? { turns: 'none' } : {}),
        ...(swapped ? { shows: 'inside' } : {}),
      },
      ...others.map(({ name }) => ({ name, inlay: { of: folder, name }, paper: 1 })),
    ],
    papers: [paper, ...(others.length === 0 ? [] : [secondPaper(paper, second)])],
    ...(spec.cutter === undefined ? {} : { cutter: spec.cutter }),
    ...(spec.convention === undefined ? {} : { convention: spec.convention }),
  };
}
