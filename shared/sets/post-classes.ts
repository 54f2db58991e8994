import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import type { Box } from '../ribbon/ribbon.ts';

/** What one post would make of a piece by its size. A hint: limits and prices change, and only the post decides. */
export interface PostHint {
  readonly post: string;
  readonly size: string;
  readonly notes: readonly string[];
  readonly source: string;
  /** The date of the published limits, where their source tells one. */
  readonly dated?: string;
}

/** The longer side of the face, the shorter one, and the thickness. */
interface Sides {
  readonly length: Nm;
  readonly height: Nm;
  readonly thickness: Nm;
}

type Most = readonly [length: Nm, height: Nm, thickness: Nm];

const within = (
  { length, height, thickness }: Sides,
  [mostLength, mostHeight, mostThickness]: Most,
): boolean => length <= mostLength && height <= mostHeight && thickness <= mostThickness;

const atLeast = (
  { length, height, thickness }: Sides,
  [leastLength, leastHeight, leastThickness]: Most,
): boolean => length >= leastLength && height >= leastHeight && thickness >= leastThickness;

/**
 * The class of a closed piece at each post whose limits are known, by its size, and by its weight as far as that is known.
 * @param grammes what is known of its weight, without contents that nobody weighed
 */
export function postHints({ width, height, thickness }: Box, grammes = 0): readonly PostHint[] {
  const sides = { length: Math.max(width, height), height: Math.min(width, height), thickness };
  return [usps(sides, grammes), upu(sides, grammes), royalMail(sides, grammes)];
}

const weighs = (grammes: number, limit: string): string =>
  `this weighs ${Number(grammes.toFixed(1))} g or more; ${limit}`;

/** 3.5 oz and 13 oz, of 28.349523125 g. */
const mostOfLetter = 99.2233;
const mostOfFlat = 368.5438;

/**
 * Source: USPS Domestic Mail Manual, 24 January 2021, 101.1.1 to 1.2; weight of letters: its quick service guide 201; weight
 * of flats: First-Class Mail, from memory.
 */
function usps(sides: Sides, grammes: number): PostHint {
  const about = {
    post: 'United States Postal Service',
    source: 'USPS Domestic Mail Manual, 101.1.1 to 101.1.2',
    dated: '2021-01-24',
  };
  const { length, height, thickness } = sides;
  if (thickness <= inch(0.25) && !atLeast(sides, [inch(5), inch(3.5), inch(0.007)]))
    return {
      ...about,
      size: 'not mailable',
      notes: ['pieces of 1/4 in or thinner are at least 3 1/2 by 5 in, and 0.007 in thick'],
    };
  if (grammes > mostOfFlat)
    return {
      ...about,
      size: 'parcel',
      notes: [weighs(grammes, 'a flat weighs at most 13 oz as First-Class Mail')],
    };
  const heavy = grammes > mostOfLetter;
  if (heavy || !within(sides, [inch(11.5), inch(6.125), inch(0.25)]))
    return within(sides, [inch(15), inch(12), inch(0.75)])
      ? {
          ...about,
          size: 'large envelope (flat)',
          notes: heavy ? [weighs(grammes, 'a letter weighs at most 3.5 oz')] : [],
        }
      : { ...about, size: 'parcel', notes: ['larger than a flat'] };
  const large = height > inch(4.25) || length > inch(6);
  return {
    ...about,
    size: 'letter',
    notes: [
      ...(length < 1.3 * height || length > 2.5 * height
        ? ['non-machinable: its length is not 1.3 to 2.5 times its height']
        : []),
      ...(large && thickness < inch(0.009) ? ['non-machinable: this size is at least 0.009 in thick'] : []),
      'clasps, strings, buttons and lumps make a letter non-machinable; a letter weighs at most 3.5 oz',
    ],
  };
}

/** Source: Letter Post Regulations of the Universal Postal Union, article 203, as Korea Post publishes it. */
function upu(sides: Sides, grammes: number): PostHint {
  const about = {
    post: 'Universal Postal Union, letter post',
    source: 'UPU Letter Post Regulations, article 203, as published by Korea Post',
  };
  const { length, height, thickness } = sides;
  if (length > mm(600) || length + height + thickness > mm(900))
    return {
      ...about,
      size: 'not letter post',
      notes: ['its greatest side is at most 600 mm, all three together 900 mm'],
    };
  if (length < mm(138) || height < mm(88))
    return {
      ...about,
      size: 'not letter post',
      notes: ['its face is at least 90 by 140 mm, with a tolerance of 2 mm'],
    };
  if (grammes > 2000)
    return { ...about, size: 'not letter post', notes: ['letter post weighs at most 2 kg'] };
  const standard = within(sides, [mm(235), mm(120), mm(5)]) && length >= 1.4 * height;
  if (standard && grammes <= 20) return { ...about, size: 'standardised letter', notes: ['at most 20 g'] };
  return {
    ...about,
    size: 'letter',
    notes: [
      ...(standard ? [weighs(grammes, 'a standardised letter weighs at most 20 g')] : []),
      'at most 2 kg',
    ],
  };
}

/** Source: Ofcom's page on large letters; weights from other public pages. */
function royalMail(sides: Sides, grammes: number): PostHint {
  const about = { post: 'Royal Mail', source: 'Ofcom, sizes of letters and large letters' };
  const letter = within(sides, [mm(240), mm(165), mm(5)]);
  if (letter && grammes <= 100) return { ...about, size: 'letter', notes: ['at most 100 g'] };
  const large = within(sides, [mm(353), mm(250), mm(25)]);
  if (!large || grammes > 750)
    return {
      ...about,
      size: 'parcel',
      notes: large ? [weighs(grammes, 'a large letter weighs at most 750 g')] : [],
    };
  return {
    ...about,
    size: 'large letter',
    notes: [...(letter ? [weighs(grammes, 'a letter weighs at most 100 g')] : []), 'at most 750 g'],
  };
}
