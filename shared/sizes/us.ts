import { type Authority, imperial, PWG, type Size, type SizeKind } from './size.ts';

const LISTS = 'published lists of envelope sizes, two of which agree';
const ONE_LIST = 'one published list of envelope sizes; card sizes for it differ';
const MEMORY = 'from memory';

const as =
  (kind: SizeKind, label: string) =>
  (
    id: string,
    name: string,
    width: number,
    height: number,
    authority: Authority,
    source: string,
    takes?: readonly string[],
  ): Size => ({
    id,
    title: `US ${name}${label}`,
    kinds: [kind],
    ...imperial(width, height),
    source,
    authority,
    ...(takes === undefined ? {} : { takes }),
  });

const card = as('card', ' card');
const flat = (size: Size): Size => ({ ...size, flat: true });
const envelope = as('envelope', ' envelope');
const sheet = as('sheet', '');

const cards: readonly Size[] = [
  card('us-a1', 'A1 (4-bar)', 3 + 1 / 2, 4 + 7 / 8, 'trade custom', 'makers differ; measure yours'),
  card('us-a2', 'A2', 4 + 1 / 4, 5 + 1 / 2, 'trade custom', `a quarter of a letter sheet; ${MEMORY}`),
  card('us-a6', 'A6', 4 + 1 / 2, 6 + 1 / 4, 'trade custom', LISTS),
  card('us-a7', 'A7', 5, 7, 'standard', `${PWG}, na_5x7`),
  card('us-a8', 'A8', 5 + 1 / 4, 7 + 7 / 8, 'trade custom', LISTS),
  card('us-a9', 'A9', 5 + 1 / 2, 8 + 1 / 2, 'standard', `half a letter sheet; ${PWG}, na_invoice`),
  card('us-a10', 'A10', 5 + 3 / 4, 9 + 1 / 4, 'trade custom', LISTS),
  card('us-slim', 'slim', 3 + 5 / 8, 8 + 5 / 8, 'trade custom', LISTS),
  // 11/3 in is no whole number of nanometres; it is the one size here that is rounded to one.
  card('us-letter-third', 'third-of-letter', 11 / 3, 8 + 1 / 2, 'trade custom', 'a letter sheet in three'),
  card(
    'us-monarch-third',
    'third-of-monarch',
    3 + 1 / 2,
    7 + 1 / 4,
    'trade custom',
    'a 7 1/4 x 10 1/2 in sheet in three',
  ),
  flat(card('us-3x5', '3 x 5 in index', 3, 5, 'standard', `${PWG}, na_index-3x5`)),
  flat(card('us-4x6', '4 x 6 in index', 4, 6, 'standard', `${PWG}, na_index-4x6`)),
  flat(card('us-5x8', '5 x 8 in index', 5, 8, 'standard', `${PWG}, na_index-5x8`)),
];

const envelopes: readonly Size[] = [
  envelope('us-a1-envelope', 'A1 (4-bar)', 3 + 5 / 8, 5 + 1 / 8, 'trade custom', ONE_LIST, ['us-a1']),
  envelope('us-a2-envelope', 'A2', 4 + 3 / 8, 5 + 3 / 4, 'standard', `${PWG}, na_a2`, ['us-a2']),
  envelope('us-a6-envelope', 'A6', 4 + 3 / 4, 6 + 1 / 2, 'trade custom', LISTS, ['us-a6']),
  envelope('us-a7-envelope', 'A7', 5 + 1 / 4, 7 + 1 / 4, 'trade custom', LISTS, ['us-a7']),
  envelope('us-a8-envelope', 'A8', 5 + 1 / 2, 8 + 1 / 8, 'trade custom', LISTS, ['us-a8']),
  envelope('us-a9-envelope', 'A9', 5 + 3 / 4, 8 + 3 / 4, 'trade custom', MEMORY, ['us-a9']),
  envelope('us-a10-envelope', 'A10', 6, 9 + 1 / 2, 'trade custom', LISTS, ['us-a10']),
  envelope('us-slim-envelope', 'slim', 3 + 7 / 8, 8 + 7 / 8, 'trade custom', LISTS, ['us-slim']),
  envelope('us-9-envelope', 'No. 9', 3 + 7 / 8, 8 + 7 / 8, 'standard', `${PWG}, na_number-9`),
  envelope('us-10-envelope', 'No. 10', 4 + 1 / 8, 9 + 1 / 2, 'standard', `${PWG}, na_number-10`, [
    'us-letter-third',
  ]),
  envelope('us-11-envelope', 'No. 11', 4 + 1 / 2, 10 + 3 / 8, 'standard', `${PWG}, na_number-11`),
  envelope('us-12-envelope', 'No. 12', 4 + 3 / 4, 11, 'standard', `${PWG}, na_number-12`),
  envelope('us-14-envelope', 'No. 14', 5, 11 + 1 / 2, 'standard', `${PWG}, na_number-14`),
  envelope('us-monarch-envelope', 'monarch (7 3/4)', 3 + 7 / 8, 7 + 1 / 2, 'standard', `${PWG}, na_monarch`, [
    'us-monarch-third',
  ]),
  envelope(
    'us-personal-envelope',
    'personal (6 3/4)',
    3 + 5 / 8,
    6 + 1 / 2,
    'standard',
    `${PWG}, na_personal`,
  ),
];

const sheets: readonly Size[] = [
  sheet('us-letter', 'letter', 8 + 1 / 2, 11, 'standard', `${PWG}, na_letter; ${MEMORY}`),
  sheet('us-legal', 'legal', 8 + 1 / 2, 14, 'standard', `${PWG}, na_legal; ${MEMORY}`),
  sheet('us-ledger', 'ledger', 11, 17, 'standard', `${PWG}, na_ledger; ${MEMORY}`),
];

/**
 * US sizes in inches. A letter and a number name a pair, and the pair has two ids: `us-a2` is the card,
 * `us-a2-envelope` its envelope. Neither has to do with ISO A2.
 */
export const us: readonly Size[] = [...cards, ...envelopes, ...sheets];
