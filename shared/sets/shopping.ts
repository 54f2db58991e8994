import { NM_PER_MM } from '../lengths/nanometres.ts';
import { inMetres } from '../lengths/show-length.ts';
import type { CutPiece } from './cut-piece.ts';
import { ribbonNeeded, tapeNeeded } from './lengths-needed.ts';
import type { NestedPaper } from './nested-paper.ts';
import { paperTitle } from './paper-title.ts';
import type { SetSpec } from './set-spec.ts';

/** One thing to have at hand, and how much of it is to be bought. */
export interface ShoppingItem {
  readonly item: string;
  readonly kind: 'paper' | 'ribbon' | 'tape';
  /** Sheets, or metres. */
  readonly needed: number;
  readonly unit: 'sheets' | 'm';
  /** In the cupboard, where that is known. */
  readonly have?: number;
  /** What is missing. */
  readonly short: number;
  /** Packs, spools or rolls to buy, where their size is known. */
  readonly packs?: number;
  readonly packOf?: number;
  readonly cost?: Money;
}

export interface Money {
  readonly amount: number;
  readonly currency: string;
}

const cents = (amount: number): number => Number(amount.toFixed(2));

/** Everything that the set takes, papers first. */
export function shoppingList(
  set: SetSpec,
  pieces: readonly CutPiece[],
  papers: readonly NestedPaper[],
): readonly ShoppingItem[] {
  return [
    ...papers.map((paper) => paperItem(set, paper)),
    ...ribbonItem(set, pieces),
    ...tapeItem(set, pieces),
  ];
}

function paperItem(set: SetSpec, { paper, nesting }: NestedPaper): ShoppingItem {
  const { count, packOf = 1, price } = set.papers[paper] ?? {};
  const short = Math.max(0, nesting.sheets - (count ?? 0));
  const packs = Math.ceil(short / packOf);
  return {
    item: paperTitle(set, paper),
    kind: 'paper',
    needed: nesting.sheets,
    unit: 'sheets',
    ...(count === undefined ? {} : { have: count }),
    short,
    packs,
    packOf,
    ...(price === undefined
      ? {}
      : { cost: { amount: cents(packs * packOf * price.perSheet), currency: price.currency } }),
  };
}

interface Roll {
  readonly metres?: number | undefined;
  readonly price?: { readonly perPack: number; readonly currency: string } | undefined;
}

/** @param packs undefined where the roll's length is not known */
function rollItem(kind: 'ribbon' | 'tape', nm: number, roll: Roll, packs: number | undefined): ShoppingItem {
  const { price } = roll;
  return {
    item: kind,
    kind,
    needed: inMetres(nm),
    unit: 'm',
    short: inMetres(nm),
    ...(packs === undefined || roll.metres === undefined ? {} : { packs, packOf: roll.metres }),
    ...(price === undefined || packs === undefined
      ? {}
      : { cost: { amount: cents(packs * price.perPack), currency: price.currency } }),
  };
}

const inNm = (lengthMetres: number): number => lengthMetres * 1000 * NM_PER_MM;

function ribbonItem(set: SetSpec, pieces: readonly CutPiece[]): readonly ShoppingItem[] {
  const needed = ribbonNeeded(set, pieces);
  if (!set.ribbon || !needed) return [];
  // a ribbon is not pieced together: a spool gives whole lengths only
  const perSpool = set.ribbon.metres === undefined ? 0 : Math.floor(inNm(set.ribbon.metres) / needed.each);
  return [
    rollItem(
      'ribbon',
      needed.total,
      set.ribbon,
      perSpool === 0 ? undefined : Math.ceil(needed.count / perSpool),
    ),
  ];
}

function tapeItem(set: SetSpec, pieces: readonly CutPiece[]): readonly ShoppingItem[] {
  const total = tapeNeeded(pieces);
  if (total === 0) return [];
  const { tape = {} } = set;
  return [
    rollItem(
      'tape',
      total,
      tape,
      tape.metres === undefined ? undefined : Math.ceil(total / inNm(tape.metres)),
    ),
  ];
}

/** What each kit costs, by currency: sheets that are cut and shares of spools and rolls, not what is left of packs. */
export function costPerKit(
  set: SetSpec,
  pieces: readonly CutPiece[],
  papers: readonly NestedPaper[],
): readonly Money[] {
  const byCurrency = new Map<string, number>();
  const add = (currency: string, amount: number) =>
    byCurrency.set(currency, (byCurrency.get(currency) ?? 0) + amount);
  for (const { paper, nesting } of papers) {
    const price = set.papers[paper]?.price;
    if (price) add(price.currency, nesting.sheets * price.perSheet);
  }
  const lengths = [
    [set.ribbon, ribbonNeeded(set, pieces)?.total ?? 0],
    [set.tape, tapeNeeded(pieces)],
  ] as const;
  for (const [roll, nm] of lengths)
    if (roll?.price && roll.metres !== undefined)
      add(roll.price.currency, (nm / inNm(roll.metres)) * roll.price.perPack);
  return [...byCurrency].map(([currency, amount]) => ({ amount: cents(amount / set.kits), currency }));
}
