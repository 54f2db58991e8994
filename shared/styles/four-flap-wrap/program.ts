import type { FillStep, FoldProgram, FoldStep, Panel } from '../../creases/fold-program.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import { mm } from '../../lengths/nanometres.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, e1, e2, e3, H, s, t, W } from './dimensions.ts';
import type { FourFlapWrapSpec } from './spec.ts';

/** The contents lie on the base, within four hinges and under the flaps. */
export const pockets: readonly PocketPlace[] = [
  {
    name: 'wrap',
    panel: 'base',
    behind: [],
    front: [],
    mouth: 'top',
    walls: ['left', 'right', 'top', 'bottom', 'over'],
  },
];

/** Each flap is narrower than its hinge by this at either side; common practice. */
const taper = mm(1.5);

type Corner = readonly [number, number];

/** One flap with its hinge: where its two scores and its free edge lie, and its two ends. */
interface Flap {
  readonly name: string;
  readonly upright: boolean;
  readonly scores: readonly [number, number];
  readonly end: number;
  readonly from: number;
  readonly to: number;
  /** How far each score is bent in the picture of the half open wrap. */
  readonly ajar: readonly [number, number];
}

function flapsOf(d: Dimensions): readonly Flap[] {
  const left = at(d, s) + at(d, e1);
  const right = left + at(d, W);
  const top = at(d, t) + at(d, e3);
  const bottom = top + at(d, H);
  const beside = { upright: true, from: top, to: bottom } as const;
  const along = { upright: false, from: left, to: right } as const;
  return [
    { ...beside, name: 'left flap', scores: [left, at(d, s)], end: 0, ajar: [90, 80] },
    {
      ...beside,
      name: 'right flap',
      scores: [right, right + at(d, e1)],
      end: right + at(d, e1) + at(d, s),
      ajar: [90, 60],
    },
    {
      ...along,
      name: 'bottom flap',
      scores: [bottom, bottom + at(d, e2)],
      end: bottom + at(d, e2) + at(d, b),
      ajar: [60, 20],
    },
    { ...along, name: 'top flap', scores: [top, at(d, t)], end: 0, ajar: [70, 30] },
  ];
}

/** The hinge and what lies beyond it. */
function panelsOf({ name, upright, scores: [near, far], end, from, to }: Flap): Panel[] {
  const turned = ([along, across]: Corner): Corner => (upright ? [across, along] : [along, across]);
  const hinge = [[from, near] as const, [to, near] as const, [to, far] as const, [from, far] as const].map(
    turned,
  );
  const flap = [
    [from + taper, far] as const,
    [to - taper, far] as const,
    [to - taper, end] as const,
    [from + taper, end] as const,
  ].map(turned);
  return [panelOf(`${name} hinge`, hinge, { label: 'hinge', labels: 'hinges' }), panelOf(name, flap)];
}

/** The two creases of a flap, which are made before anything is folded over. */
function creasesOf({ name, upright, scores, end, from, to, ajar }: Flap): FoldStep[] {
  const middle = (from + to) / 2;
  const turned = ([along, across]: Corner): Corner => (upright ? [across, along] : [along, across]);
  return scores.map((score, index) =>
    foldAlong(
      index === 0 ? `${name} at the base` : `${name} at its hinge`,
      [turned([from, score]), turned([to, score])],
      turned([middle, end]),
      { angle: 90, eased: true, ajar: ajar[index] ?? 90 },
    ),
  );
}

const creaseNames = (...names: readonly string[]): string[] =>
  names.flatMap((name) => [`${name} at the base`, `${name} at its hinge`]);

/** How the blank is creased and closed over its contents. */
export function program(spec: FourFlapWrapSpec, d: Dimensions): FoldProgram {
  const flaps = flapsOf(d);
  const left = at(d, s) + at(d, e1);
  const top = at(d, t) + at(d, e3);
  const fill: FillStep[] =
    spec.contents === undefined
      ? []
      : [{ kind: 'fill', name: 'contents', pockets: ['wrap'], task: 'lay {sets} on the base.' }];
  return programOn(
    [panelOf('base', rectangle(left, top, left + at(d, W), top + at(d, H))), ...flaps.flatMap(panelsOf)],
    [
      ...flaps.flatMap(creasesOf),
      ...fill,
      {
        kind: 'stand',
        name: 'close the sides',
        folds: creaseNames('left flap', 'right flap'),
        task: 'Close the side flaps over the contents.',
      },
      {
        kind: 'stand',
        name: 'close the bottom',
        folds: creaseNames('bottom flap'),
        task: 'Close the bottom flap over them.',
      },
      {
        kind: 'stand',
        name: 'close the top',
        folds: creaseNames('top flap'),
        task: 'Close the top flap over all of them, and tie the wrap or put a band around it.',
      },
    ],
  );
}
