import type { FillStep, FoldProgram, GlueStep } from '../../creases/fold-program.ts';
import { glueKeepOut, usualGlueWidth } from '../../creases/glue-keep-out.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { foldAlong, panelOf, panelOfPieces, programOn, rectangle } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, H, r, W } from './dimensions.ts';
import { notchedFront } from './front.ts';
import type { SlipSleeveSpec } from './spec.ts';

/** The contents lie between the back with its tabs and the front. */
export const pockets: readonly PocketPlace[] = [
  {
    name: 'sleeve',
    panel: 'back',
    behind: ['side tab', 'bottom tab'],
    front: ['front'],
    mouth: 'top',
    closed: [
      { side: 'left', by: 'tab' },
      { side: 'bottom', by: 'tab' },
      { side: 'right', by: 'fold' },
    ],
  },
];

const { edge, mouth } = glueKeepOut;

/** Tabs begin this far from the corners, and are cut off at 45°, so that they never lie on each other; common practice. */
const inset = mm(2);

/** How the blank is folded, glued and filled. */
export function program(spec: SlipSleeveSpec, d: Dimensions): FoldProgram {
  const [width, height, tab] = [at(d, W), at(d, H), at(d, b)];
  const [left, fold, right] = [tab, tab + width, tab + 2 * width];
  const fill: FillStep[] =
    spec.contents === undefined ? [] : [{ kind: 'fill', name: 'contents', pockets: ['sleeve'] }];
  return programOn(
    [
      panelOf(
        'side tab',
        [
          [left, inset],
          [left, height - inset],
          [0, height - inset - tab],
          [0, inset + tab],
        ],
        { label: 'tab', labels: 'tabs' },
      ),
      panelOf('back', rectangle(left, 0, fold, height)),
      panelOfPieces('front', notchedFront(fold, right, height, at(d, r))),
      panelOf(
        'bottom tab',
        [
          [left + inset, height],
          [fold - inset, height],
          [fold - inset - tab, height + tab],
          [left + inset + tab, height + tab],
        ],
        { label: 'tab', labels: 'tabs' },
      ),
    ],
    [
      foldAlong(
        'side tab',
        [
          [left, 0],
          [left, height],
        ],
        [0, height / 2],
      ),
      foldAlong(
        'bottom tab',
        [
          [left, height],
          [fold, height],
        ],
        [left + width / 2, height + tab],
      ),
      foldAlong(
        'front',
        [
          [fold, 0],
          [fold, height],
        ],
        [right, height / 2],
        { ajar: 140 },
      ),
      glue(d, spec.glue?.width ?? usualGlueWidth),
      ...fill,
    ],
  );
}

function glue(d: Dimensions, glueWidth: Nm): GlueStep {
  const [width, height, tab] = [at(d, W), at(d, H), at(d, b)];
  const askew = inset + tab + edge;
  return {
    kind: 'glue',
    name: 'glue at the tabs',
    holds: 'tabs',
    strips: [
      {
        panel: 'side tab',
        face: 'outside',
        to: 'front',
        left: edge,
        right: edge + glueWidth,
        top: Math.max(askew, mouth),
        bottom: height - askew,
      },
      {
        panel: 'bottom tab',
        face: 'outside',
        to: 'front',
        left: tab + askew,
        right: tab + width - askew,
        top: height + tab - edge - glueWidth,
        bottom: height + tab - edge,
      },
    ],
    width: glueWidth,
    inset: edge,
    lines: 1,
  };
}
