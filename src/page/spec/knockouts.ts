import { inInches } from '../../../shared/lengths/show-length.ts';
import { isObject, type Json, type Spec } from './pointer.ts';

/** What can be cut out, by the names that the page gives them. */
export const shapeNames = [
  'circle',
  'oval',
  'rounded-rectangle',
  'regular-polygon',
  'star',
  'heart',
  'scalloped-circle',
  'scalloped-rectangle',
  'arch',
  'tag',
] as const;
/** What is no figure on a place. */
const otherKinds = ['ribbon-slots', 'thumb-notch', 'rounded-corners'] as const;
export const kindNames = [...shapeNames, 'lettering', 'artwork', ...otherKinds] as const;
export type KindName = (typeof kindNames)[number];

const isKind = (text: Json | undefined): text is KindName => kindNames.some((each) => each === text);

/** Measures of a shape that a maker gives, and what each begins with in millimetres. */
export type MeasureName = 'diameter' | 'width' | 'height' | 'points' | 'sides';
const across = { diameter: 30 } as const;
const both = { width: 40, height: 30 } as const;

const measures: Readonly<
  Record<(typeof shapeNames)[number], Readonly<Partial<Record<MeasureName, number>>>>
> = {
  circle: across,
  oval: both,
  'rounded-rectangle': both,
  'regular-polygon': { sides: 6, ...across },
  star: { points: 5, ...across },
  heart: { width: 35 },
  'scalloped-circle': across,
  'scalloped-rectangle': both,
  arch: { width: 30, height: 45 },
  tag: { width: 30, height: 50 },
};

const isCount = (name: string): boolean => name === 'points' || name === 'sides';

/** The measures that a kind asks for. */
export const measuresOf = (kind: KindName): readonly MeasureName[] =>
  kind in measures ? (Object.keys(measures[kind as keyof typeof measures]) as MeasureName[]) : [];

/** What kind of knockout it is, as the page has it; nothing for one that the page does not know. */
export function kindOf(knockout: Json | undefined): KindName | undefined {
  if (!isObject(knockout)) return undefined;
  if (isKind(knockout.kind)) return knockout.kind;
  if (!isObject(knockout.figure)) return undefined;
  if (knockout.figure.lettering !== undefined) return 'lettering';
  if (knockout.figure.artwork !== undefined) return 'artwork';
  return isKind(knockout.figure.shape) ? knockout.figure.shape : undefined;
}

/** Where to begin: names that the folder has, and the units of the page. */
export interface Beginning {
  readonly place: string;
  readonly pocket: string;
  readonly units: Units;
}

export type Units = 'mm' | 'in';

/** An eighth of an inch, in millimetres and in nanometres. */
const eighth = { mm: 3.175, nm: 3_175_000 };

/** A length to begin with: round millimetres, or about as much in eighths of an inch. */
export const lengthToBegin = (mm: number, units: Units): string =>
  units === 'mm' ? `${mm} mm` : `${inInches(Math.max(1, Math.round(mm / eighth.mm)) * eighth.nm)} in`;

/** A lighthouse, to begin with until a drawing of the maker's own is there. */
const lighthouse = 'M4 30 L6 9 H4 V6 H6 V4 L8 1 L10 4 V6 H12 V9 H10 L12 30 Z';

function figureOf(kind: Exclude<KindName, (typeof otherKinds)[number]>, units: Units): Spec {
  if (kind === 'lettering') return { lettering: 'Light', height: lengthToBegin(20, units) };
  if (kind === 'artwork') return { artwork: lighthouse, height: lengthToBegin(40, units) };
  const sizes = Object.entries(measures[kind]).map(
    ([name, value]) => [name, isCount(name) ? value : lengthToBegin(value, units)] as const,
  );
  return { shape: kind, ...Object.fromEntries(sizes) };
}

/** A new knockout of a kind, in the middle of a place. */
export function newKnockout(kind: KindName, { place, pocket, units }: Beginning): Spec {
  if (kind === 'thumb-notch') return { kind, pocket };
  if (kind === 'rounded-corners') return { kind, place, radius: lengthToBegin(6, units) };
  if (kind === 'ribbon-slots') return { kind, on: { place }, ribbon: lengthToBegin(10, units) };
  return { kind: 'figure', on: { place }, figure: figureOf(kind, units) };
}

/** The same knockout as another kind, in the same place. */
export function asKind(kind: KindName, knockout: Json, beginning: Beginning): Spec {
  const made = newKnockout(kind, beginning);
  if (!isObject(knockout) || !isObject(knockout.on) || !isObject(made.on)) return made;
  return { ...made, on: knockout.on };
}

/** How figures are repeated, each with what it begins with; the members that are lengths are texts. */
export const repeatsIn = (units: Units): Readonly<Record<string, Spec>> => {
  const between = lengthToBegin(25, units);
  return {
    edge: { repeat: 'edge', count: 3, length: lengthToBegin(80, units) },
    grid: { repeat: 'grid', columns: 3, rows: 2, across: between, down: between },
    ring: { repeat: 'ring', count: 6, radius: lengthToBegin(30, units) },
  };
};

/** Where the offset of a knockout stands in it; nothing for what cannot be moved. */
export const offsetPath = (knockout: Json | undefined): string | undefined => {
  if (!isObject(knockout)) return undefined;
  if (isObject(knockout.on)) return '/on/offset';
  return knockout.kind === 'thumb-notch' ? '/offset' : undefined;
};

const opposite = { right: 'left', down: 'up' } as const;
export type OffsetAxis = keyof typeof opposite;

/** An offset along one axis as one text: a minus goes to the left, or up. */
export function offsetText(offset: Json | undefined, axis: OffsetAxis): string {
  if (!isObject(offset)) return '';
  const [along, against] = [offset[axis], offset[opposite[axis]]];
  return along !== undefined ? String(along) : against === undefined ? '' : `-${String(against)}`;
}

/** An offset with one axis given as a text that may begin with a minus; nothing where nothing is moved. */
export function withOffset(offset: Json | undefined, axis: OffsetAxis, text: string): Spec | undefined {
  const before = isObject(offset) ? Object.entries(offset) : [];
  const rest = before.filter(([name]) => name !== axis && name !== opposite[axis]);
  const plain = text.trim().replace(/^[-−]\s*/u, '');
  const name = plain === text.trim() ? axis : opposite[axis];
  const all = plain === '' ? rest : [...rest, [name, plain] as const];
  return all.length === 0 ? undefined : Object.fromEntries(all);
}
