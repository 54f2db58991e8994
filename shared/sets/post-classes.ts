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

/** The size class of a closed piece at each post whose limits are known. */
export function postHints({ width, height, thickness }: Box): readonly PostHint[] {
  const sides = { length: Math.max(width, height), height: Math.min(width, height), thickness };
  return [usps(sides), upu(sides), royalMail(sides)];
}

/** Source: USPS Domestic Mail Manual, 24 January 2021, 101.1.1 to 1.2. */
function usps(sides: Sides): PostHint {
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
  if (!within(sides, [inch(11.5), inch(6.125), inch(0.25)]))
    return within(sides, [inch(15), inch(12), inch(0.75)])
      ? { ...about, size: 'large envelope (flat)', notes: [] }
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
function upu(sides: Sides): PostHint {
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
  const standard = within(sides, [mm(235), mm(120), mm(5)]) && length >= 1.4 * height;
  return standard
    ? { ...about, size: 'standardised letter', notes: ['at most 20 g'] }
    : { ...about, size: 'letter', notes: ['at most 2 kg'] };
}

/** Source: Ofcom's page on large letters; weights from other public pages. */
function royalMail(sides: Sides): PostHint {
  const about = { post: 'Royal Mail', source: 'Ofcom, sizes of letters and large letters' };
  if (within(sides, [mm(240), mm(165), mm(5)])) return { ...about, size: 'letter', notes: ['at most 100 g'] };
  return within(sides, [mm(353), mm(250), mm(25)])
    ? { ...about, size: 'large letter', notes: ['at most 750 g'] }
    : { ...about, size: 'parcel', notes: [] };
}
