import type { Addressed } from './address.ts';
import { isObject, type Json, type Spec, valueAt, withValue } from './pointer.ts';

/** What a plan tells of the sheet and of every size, as far as a set needs it. */
interface PlanForSet {
  readonly sheet: {
    readonly size?: string | undefined;
    readonly width: { readonly mm: number };
    readonly height: { readonly mm: number };
    readonly turned: boolean;
  };
}

const omit = (spec: Spec, ...members: readonly string[]): Spec =>
  Object.fromEntries(Object.entries(spec).filter(([member]) => !members.includes(member)));

const millimetres = (length: unknown): number | undefined =>
  typeof length === 'object' && length !== null && 'mm' in length && typeof length.mm === 'number'
    ? length.mm
    : undefined;

/** The paper of a set. It cannot be said to lie turned: one that does is given as it lies. */
function paperOf({ stock }: Spec, { sheet }: PlanForSet): Json {
  const asked = isObject(stock) ? omit(stock, 'turned') : {};
  const { width, height } = sheet;
  if (sheet.turned)
    return {
      ...omit(asked, 'size', 'width', 'height'),
      width: `${height.mm} mm`,
      height: `${width.mm} mm`,
    };
  if (isObject(stock)) return asked;
  return sheet.size === undefined
    ? { width: `${width.mm} mm`, height: `${height.mm} mm` }
    : { size: sheet.size };
}

/**
 * Several folders like the one on the table, for `/v1/sets/sheets`: each of its sizes is fixed, so that the set's folder
 * is this one.
 * @param lengths JSON Pointers of the sizes that a spec of this style can fix
 */
export function setOf(
  { spec, swapped }: Addressed,
  plan: PlanForSet,
  lengths: readonly string[],
  kits: number,
): Spec {
  const make = lengths.reduce(
    (made, path) => {
      const size = millimetres(valueAt(plan as unknown as Json, path));
      return size === undefined || size === 0 ? made : withValue(made, path, `${size} mm`);
    },
    omit(spec, 'stock', 'cutter', 'convention'),
  );
  return {
    kits,
    ...(spec.units === undefined ? {} : { units: spec.units }),
    pieces: [{ name: 'folder', make, ...(swapped ? { shows: 'inside' } : {}) }],
    papers: [paperOf(spec, plan)],
    ...(spec.cutter === undefined ? {} : { cutter: spec.cutter }),
    ...(spec.convention === undefined ? {} : { convention: spec.convention }),
  };
}
