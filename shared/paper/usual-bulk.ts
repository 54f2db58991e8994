import type { PaperGrade } from './basis-weight.ts';

/** A sort of paper with the bulk, in cm³/g, that is assumed where none is given. */
export interface PaperSort {
  readonly name: string;
  readonly bulk: number;
  readonly source: string;
}

const sort = (name: string, bulk: number, source: string): PaperSort => Object.freeze({ name, bulk, source });

const GPO = 'US Government Paper Specification Standards, vol. 11 (1999)';

/** Densities of the US standard are per cm³; their inverse is the bulk. No standard gives one for card. */
export const paperSorts = Object.freeze({
  text: sort('uncoated text', 1 / 0.75, `${GPO}, JCP A55 and A91: 0.75 g/cm³`),
  index: sort('index', 1 / 0.87, `${GPO}, JCP K10: 0.87 g/cm³`),
  coated: sort('gloss coated', 1, `${GPO}, JCP A175: 1.00 g/cm³`),
  bond: sort('copy paper', 1.3, 'common practice'),
  card: sort('uncoated card', 1.3, 'common practice'),
});

const sortOfGrade: Readonly<Record<PaperGrade, PaperSort>> = {
  bond: paperSorts.bond,
  writing: paperSorts.bond,
  ledger: paperSorts.bond,
  text: paperSorts.text,
  book: paperSorts.text,
  offset: paperSorts.text,
  cover: paperSorts.card,
  index: paperSorts.index,
  bristol: paperSorts.card,
  tag: paperSorts.card,
  newsprint: paperSorts.text,
};

/** From this grammage, in g/m², paper is taken for card: where scoring first is advised; common practice. */
const CARD_FROM = 150;

/** The sort that a US grade is taken for. */
export const usualSortOfGrade = (grade: PaperGrade): PaperSort => sortOfGrade[grade];

/** The sort that paper of a grammage, in g/m², is taken for when nothing else is known. */
export const usualSortOfGrammage = (grammage: number): PaperSort =>
  grammage < CARD_FROM ? paperSorts.text : paperSorts.card;
