import { describe, expect, test } from 'vitest';
import { inch, mm, type Nm } from '../../shared/lengths/nanometres.ts';
import { postHints } from '../../shared/sets/post-classes.ts';

const hintsOf = (width: Nm, height: Nm, thickness: Nm) => {
  const [usps, upu, royalMail] = postHints({ width, height, thickness });
  return { usps, upu, royalMail };
};
const thin = inch(0.1);
const isMachinable = (notes: readonly string[] = []) =>
  !notes.some((note) => note.startsWith('non-machinable'));

// USPS Domestic Mail Manual of 24 January 2021, 101.1.1 to 1.2; which class each size falls in was worked out from its text
describe('USPS, 24 January 2021', () => {
  test.each<[string, Nm, Nm, string, boolean]>([
    ['4-bar envelope', inch(3.625), inch(5.125), 'letter', true],
    ['A2 envelope', inch(4.375), inch(5.75), 'letter', true],
    ['A7 envelope', inch(5.25), inch(7.25), 'letter', true],
    ['#10 envelope', inch(4.125), inch(9.5), 'letter', true],
    ['6 by 6 in', inch(6), inch(6), 'letter', false],
    ['C6', mm(114), mm(162), 'letter', true],
    ['DL', mm(110), mm(220), 'letter', true],
    ['C5, 6.378 in high', mm(162), mm(229), 'large envelope (flat)', true],
    ['C7', mm(81), mm(114), 'not mailable', true],
    ['10 by 4 in, at the limit of 2.5', inch(10), inch(4), 'letter', true],
    ['at every limit of a letter', inch(11.5), inch(6.125), 'letter', true],
    ['longer than a flat', inch(15.5), inch(11), 'parcel', true],
  ])('%s', (_, width, height, size, machinable) => {
    const { usps } = hintsOf(width, height, thin);
    expect(usps?.size).toBe(size);
    expect(isMachinable(usps?.notes)).toBe(machinable);
    expect(usps?.dated).toBe('2021-01-24');
  });

  test('thickness: a letter to 1/4 in, a flat to 3/4 in, 0.009 in for large ones', () => {
    const [width, height] = [inch(5), inch(7)];
    expect(hintsOf(width, height, inch(0.25)).usps?.size).toBe('letter');
    expect(hintsOf(width, height, inch(0.25) + 1).usps?.size).toBe('large envelope (flat)');
    expect(hintsOf(width, height, inch(0.75)).usps?.size).toBe('large envelope (flat)');
    expect(hintsOf(width, height, inch(0.75) + 1).usps?.size).toBe('parcel');
    expect(isMachinable(hintsOf(width, height, inch(0.009)).usps?.notes)).toBe(true);
    expect(isMachinable(hintsOf(width, height, inch(0.008)).usps?.notes)).toBe(false);
    expect(hintsOf(width, height, inch(0.006)).usps?.size).toBe('not mailable');
  });
});

// UPU Letter Post Regulations, article 203, as published by Korea Post: 90 x 140 mm (tolerance 2) to 120 x 235 mm, length at
// least 1.4 x width, 5 mm; not above 600 mm, nor 900 mm all together
test.each<[Nm, Nm, Nm, string]>([
  [mm(120), mm(235), mm(5), 'standardised letter'],
  [mm(120), mm(235), mm(5) + 1, 'letter'],
  [mm(120), mm(160), mm(2), 'letter'],
  [mm(88), mm(138), mm(2), 'standardised letter'],
  [mm(87), mm(140), mm(2), 'not letter post'],
  [mm(300), mm(601), mm(2), 'not letter post'],
  [mm(400), mm(490), mm(11), 'not letter post'],
])('UPU: %d by %d by %d nm is a %s', (width, height, thickness, size) => {
  expect(hintsOf(width, height, thickness).upu?.size).toBe(size);
});

// Ofcom, sizes of letters and large letters of Royal Mail: 240 x 165 x 5 mm; 353 x 250 x 25 mm
test.each<[Nm, Nm, Nm, string]>([
  [mm(165), mm(240), mm(5), 'letter'],
  [mm(165), mm(240), mm(5) + 1, 'large letter'],
  [mm(250), mm(353), mm(25), 'large letter'],
  [mm(251), mm(353), mm(25), 'parcel'],
])('Royal Mail: %d by %d by %d nm is a %s', (width, height, thickness, size) => {
  expect(hintsOf(width, height, thickness).royalMail?.size).toBe(size);
});

// 3.5 oz = 99.2 g and 20 g, 2 kg: the same sources; 100 g and 750 g: public pages of the post; flats of First-Class Mail end at
// 13 oz = 368.5 g: from memory
test.each<[number, string, string, string]>([
  [20, 'letter', 'standardised letter', 'letter'],
  [99, 'letter', 'letter', 'letter'],
  [99.5, 'large envelope (flat)', 'letter', 'letter'],
  [101, 'large envelope (flat)', 'letter', 'large letter'],
  [368.5, 'large envelope (flat)', 'letter', 'large letter'],
  [368.6, 'parcel', 'letter', 'large letter'],
  [751, 'parcel', 'letter', 'parcel'],
  [2001, 'parcel', 'not letter post', 'parcel'],
])('a piece of C6 that weighs %d g is put into a heavier class where it is one', (grammes, ...sizes) => {
  const hints = postHints({ width: mm(162), height: mm(114), thickness: mm(3) }, grammes);
  expect(hints.map(({ size }) => size)).toEqual(sizes);
});

test('the weight that makes a parcel is told', () => {
  const [usps] = postHints({ width: mm(162), height: mm(114), thickness: mm(3) }, 400);
  expect(usps?.notes.join()).toContain('400 g');
});
