import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { usualFoldFactor } from '../paper/fold-allowance.ts';
import { caliperOf, type KnownCaliper } from '../paper/paper-thickness.ts';
import { sizeById, sizesOfKind } from '../sizes/catalogue.ts';
import type { Size } from '../sizes/size.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';

/** One sheet that a folder may be made from, as it lies: lengths in nanometres. */
export interface Sheet {
  readonly title: string;
  /** Id of the published size, if it is one. */
  readonly size?: string;
  readonly width: Nm;
  readonly height: Nm;
  readonly paper: KnownCaliper;
  readonly oneWay: boolean;
  /** How the two prints run to each other, if the spec says. */
  readonly printPair: 'same-way' | 'head-to-foot' | undefined;
  readonly foldFactor: number;
  readonly turned: boolean | undefined;
  /** JSON Pointer of the spec member that names it; absent for a sheet from the catalogue. */
  readonly path?: string;
}

type Stock = Extract<NonNullable<FolderSpec['stock']>, readonly unknown[]>[number];

/** Width and height of something given by a size's name or measured. */
export function extent(given: {
  readonly size?: string | undefined;
  readonly width?: Nm | undefined;
  readonly height?: Nm | undefined;
}): { readonly width: Nm; readonly height: Nm } {
  const { width, height } = (given.size === undefined ? given : sizeById(given.size)) ?? {};
  if (width === undefined || height === undefined)
    throw new Error('a rectangle passed the schema without a size');
  return { width, height };
}

/** The sheets that a spec offers, the one to try first standing first; without any, every published sheet. */
export function sheetsOf(spec: FolderSpec): readonly Sheet[] {
  if (spec.stock === undefined) return listedSheets(spec.measure);
  if (!isList(spec.stock)) return [ownSheet(spec.stock, '/stock', 'your sheet')];
  return spec.stock
    .map((stock, index) => ownSheet(stock, `/stock/${index}`, `sheet ${index + 1} of your list`))
    .toSorted((one, other) => one.width * one.height - other.width * other.height);
}

const isList = (stock: NonNullable<FolderSpec['stock']>): stock is readonly Stock[] => Array.isArray(stock);

function ownSheet(stock: Stock, path: string, unnamed: string): Sheet {
  return {
    title: stock.name ?? (stock.size === undefined ? unnamed : (sizeById(stock.size)?.title ?? stock.size)),
    ...(stock.size === undefined ? {} : { size: stock.size }),
    ...extent(stock),
    paper: caliperOf(stock),
    oneWay: stock.oneWay ?? false,
    printPair: stock.printPair,
    foldFactor: stock.foldFactor ?? usualFoldFactor,
    turned: stock.oneWay === true ? (stock.turned ?? false) : stock.turned,
    path,
  };
}

/**
 * Every published sheet as stock: those of the spec's own system first, since the others are hard to buy, then
 * the smallest area. B and untrimmed sizes are seldom sold as craft paper and come last of their system.
 */
export function listedSheets(measure: Measure): readonly Sheet[] {
  const rank = ({ id, measure: own }: Size): number =>
    (own === measure ? 0 : 2) + (/^(?:iso-b|jis-b|iso-ra|iso-sra|ra|sra)/u.test(id) ? 1 : 0);
  return sizesOfKind('sheet')
    .toSorted((one, other) => rank(one) - rank(other) || one.width * one.height - other.width * other.height)
    .map((size) => ({
      title: size.title,
      size: size.id,
      width: size.width,
      height: size.height,
      paper: caliperOf({}),
      oneWay: false,
      printPair: undefined,
      foldFactor: usualFoldFactor,
      turned: undefined,
    }));
}
