import type { FillStep, FoldProgram, FoldStep, GlueStep, LockStep } from '../../creases/fold-program.ts';
import { glueKeepOut, usualGlueWidth } from '../../creases/glue-keep-out.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { foldAlong, programOn } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import { lockedPaper, locksAt, type TonguedEdge } from '../common/lock.ts';
import type { Dimensions } from '../style.ts';
import { l } from './dimensions.ts';
import { type BoxScores, boxPanels, boxScores, tabEdge } from './panels.ts';
import type { TuckBoxSpec } from './spec.ts';

/** The contents stand before the back, within sides, bottom, lid and front. */
export const pockets: readonly PocketPlace[] = [
  {
    name: 'box',
    panel: 'back',
    behind: [],
    front: [],
    mouth: 'top',
    walls: ['left', 'right', 'top', 'bottom', 'over'],
  },
];

/** A bend of 90° that is made while the sheet lies open, and laid flat again. */
const eased = { angle: 90, eased: true } as const;

/** How the blank is creased, glued or locked into a flat tube, set up and closed. */
export function program(spec: TuckBoxSpec, d: Dimensions, caliper: Nm): FoldProgram {
  const scores = boxScores(d, caliper);
  const fill: FillStep[] =
    spec.contents === undefined
      ? []
      : [{ kind: 'fill', name: 'contents', pockets: ['box'], task: 'stand {sets} in the box.' }];
  const tongued = spec.join === 'slots' ? tabEdge(scores, lockedPaper(spec, caliper)) : undefined;
  return programOn(boxPanels(d, scores, tongued), [
    ...endCreases('bottom', d, scores),
    ...endCreases('top', d, scores),
    ...wallFolds(scores),
    tongued ? lockedSeam(scores, tongued) : seam(scores, spec.glue?.width ?? usualGlueWidth),
    {
      kind: 'stand',
      name: 'set up the tube',
      folds: ['tab', 'left side', 'front', 'back'],
      task: 'Press the edges of the flat tube together until it stands square.',
    },
    {
      kind: 'stand',
      name: 'close the bottom',
      folds: endNames('bottom'),
      task: 'Fold the dust flaps of the bottom in, then the bottom over them, and tuck its flap in behind the front.',
    },
    ...fill,
    {
      kind: 'stand',
      name: 'close the lid',
      folds: endNames('top'),
      task: 'Close the lid in the same way: dust flaps, lid, tuck flap.',
    },
  ]);
}

const endNames = (which: 'top' | 'bottom'): string[] => {
  const name = which === 'top' ? 'lid' : 'bottom';
  return [`${name} dust flaps`, name, `${name} tuck flap`];
};

function endCreases(which: 'top' | 'bottom', d: Dimensions, scores: BoxScores): FoldStep[] {
  const { columns, top, bottom, nest, height } = scores;
  const end = columns[4];
  const [score, out] = which === 'top' ? [top, -1] : [bottom, 1];
  const [dustName = '', lidName = '', tuckName = ''] = endNames(which);
  const moving = [end / 2, which === 'top' ? 0 : height] as const;
  const across = (y: Nm) => [[0, y] as const, [end, y] as const] as const;
  const dusts = [`left dust flap, ${which}`, `right dust flap, ${which}`];
  // the half open box has its lid up
  const up = which === 'top';
  return [
    foldAlong(dustName, across(score - out * nest), moving, {
      ...eased,
      only: dusts,
      ...(up ? { ajar: 0 } : {}),
    }),
    foldAlong(lidName, across(score), moving, {
      ...eased,
      only: [lidName, tuckName],
      ...(up ? { ajar: 25 } : {}),
    }),
    foldAlong(tuckName, across(score + out * at(d, l)), moving, {
      ...eased,
      only: [tuckName],
      ...(up ? { ajar: 30 } : {}),
    }),
  ];
}

/** The four upright scores: two are only creased, at two the sheet is folded into a flat tube. */
function wallFolds({ columns, top, bottom }: BoxScores): FoldStep[] {
  const [first, front, right, back, end] = columns;
  const middle = (top + bottom) / 2;
  const upright = (x: Nm) => [[x, top] as const, [x, bottom] as const] as const;
  return [
    foldAlong('tab', upright(first), [0, middle], eased),
    foldAlong('front', upright(right), [end, middle], eased),
    foldAlong('left side', upright(front), [0, middle]),
    foldAlong('back', upright(back), [end, middle]),
  ];
}

/** The tab on the inside of the back. */
function seam({ top, bottom }: BoxScores, glueWidth: Nm): GlueStep {
  const { edge } = glueKeepOut;
  const askew = mm(8);
  return {
    kind: 'glue',
    name: 'glue at the seam',
    holds: 'tab',
    strips: [
      {
        panel: 'tab',
        face: 'outside',
        to: 'back',
        left: edge,
        right: edge + glueWidth,
        top: top + askew,
        bottom: bottom - askew,
      },
    ],
    width: glueWidth,
    inset: edge,
    lines: 1,
  };
}

/** The tongues of the tab through the back: it lies on the tab by as much as the tube is folded. */
const lockedSeam = ({ columns: [, front, , back] }: BoxScores, tongued: TonguedEdge): LockStep => ({
  kind: 'lock',
  name: 'lock the seam',
  holds: 'tab',
  locks: locksAt(tongued, 'back', ({ x, y }) => ({ x: x + 2 * (back - front), y })),
});
