import { metric, PWG, type Size, type SizeKind } from './size.ts';

type Row = readonly [width: number, height: number];

// Millimetres; the place in the list is the number of the size.
const a: readonly Row[] = [
  [841, 1189],
  [594, 841],
  [420, 594],
  [297, 420],
  [210, 297],
  [148, 210],
  [105, 148],
  [74, 105],
  [52, 74],
  [37, 52],
  [26, 37],
];

const b: readonly Row[] = [
  [1000, 1414],
  [707, 1000],
  [500, 707],
  [353, 500],
  [250, 353],
  [176, 250],
  [125, 176],
  [88, 125],
  [62, 88],
  [44, 62],
  [31, 44],
];

const c: readonly Row[] = [
  [917, 1297],
  [648, 917],
  [458, 648],
  [324, 458],
  [229, 324],
  [162, 229],
  [114, 162],
  [81, 114],
  [57, 81],
  [40, 57],
  [28, 40],
];

// The smallest A size that is sold as sheets, and the largest that goes flat into an envelope as a card.
const SMALLEST_SHEET = 6;
const LARGEST_CARD = 4;

const kindsOfA = (n: number): readonly SizeKind[] => {
  if (n < LARGEST_CARD) return ['sheet'];
  return n <= SMALLEST_SHEET ? ['card', 'sheet'] : ['card'];
};

// B4 to B6 are envelope sizes as well: each takes the C envelope of its number.
const kindsOfB = (n: number): readonly SizeKind[] => {
  if (n < 4) return ['sheet'];
  if (n === 4) return ['envelope', 'sheet'];
  return n <= SMALLEST_SHEET ? ['card', 'envelope', 'sheet'] : ['card'];
};

const series = (letter: string, rows: readonly Row[], standard: string) =>
  rows.map(([width, height], n) => ({
    id: `iso-${letter}${n}`,
    title: `ISO ${letter.toUpperCase()}${n}`,
    ...metric(width, height),
    source: `${standard}, as listed in ${PWG}`,
    authority: 'standard' as const,
  }));

const envelope = (id: string, title: string, [width, height]: Row): Size => ({
  id,
  title,
  kinds: ['envelope'],
  ...metric(width, height),
  source: `ISO 269 and DIN 678-1, as listed in ${PWG}`,
  authority: 'standard',
});

const untrimmed = (id: string, title: string, [width, height]: Row): Size => ({
  id,
  title,
  kinds: ['sheet'],
  ...metric(width, height),
  source: PWG,
  authority: 'standard',
});

/** The ISO series A, B and C with the envelopes and untrimmed sheets that belong to them. */
export const iso: readonly Size[] = [
  ...series('a', a, 'ISO 216').map((size, n) => ({ ...size, kinds: kindsOfA(n) })),
  ...series('b', b, 'ISO 216').map((size, n) => ({ ...size, kinds: kindsOfB(n) })),
  ...series('c', c, 'ISO 269').map((size, n): Size => {
    const kinds: readonly SizeKind[] = ['envelope'];
    return n < LARGEST_CARD ? { ...size, kinds } : { ...size, kinds, takes: [`iso-a${n}`] };
  }),
  { ...envelope('iso-dl', 'ISO DL', [110, 220]), takes: ['iso-a4-third'] },
  envelope('iso-c6-c5', 'ISO C6/C5', [114, 229]),
  envelope('iso-c7-c6', 'ISO C7/C6', [81, 162]),
  envelope('iso-b6-c4', 'ISO B6/C4', [125, 324]),
  {
    id: 'iso-a4-third',
    title: 'one third of ISO A4',
    kinds: ['card'],
    ...metric(99, 210),
    source: 'ISO 216 A4 in three',
    authority: 'trade custom',
  },
  untrimmed('iso-ra4', 'ISO RA4, untrimmed', [215, 305]),
  untrimmed('iso-sra4', 'ISO SRA4, untrimmed', [225, 320]),
];
