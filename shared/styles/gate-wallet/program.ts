import type { FillStep, FoldProgram, GlueStep, LockStep } from '../../creases/fold-program.ts';
import { glueKeepOut, usualGlueWidth } from '../../creases/glue-keep-out.ts';
import type { Nm } from '../../lengths/nanometres.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import {
  type BottomPocket,
  pocketLocks,
  pocketPanels,
  pocketPlace,
  pocketStrips,
  tabFolds,
} from '../common/bottom-pocket.ts';
import { at } from '../common/dimension.ts';
import { lockedPaper } from '../common/lock.ts';
import type { Dimensions } from '../style.ts';
import { b, D, D2, H, p, S, S2, W } from './dimensions.ts';
import type { GateWalletSpec } from './spec.ts';

const place = { name: 'pocket', panel: 'middle', ends: { left: 'tab', right: 'tab' } } as const;

/** The pocket stands open at its top, on the middle. */
export const pockets = [pocketPlace(place)];

/** How the blank is folded, glued or locked, and filled. */
export function program(spec: GateWalletSpec, d: Dimensions, caliper: Nm): FoldProgram {
  const [height, pocketHeight] = [at(d, H), at(d, p)];
  const glueWidth = spec.glue?.width ?? usualGlueWidth;
  const leftHinge = at(d, D);
  const left = leftHinge + at(d, S);
  const right = left + at(d, W);
  const rightHinge = right + at(d, S2);
  const end = rightHinge + at(d, D2);
  const pocket: BottomPocket = {
    ...place,
    left,
    right,
    bottom: height,
    height: pocketHeight,
    tab: at(d, b),
    glueWidth,
    locked: spec.join === 'slots' ? lockedPaper(spec, caliper) : undefined,
  };
  const panel = (name: string, from: number, to: number, label?: string) =>
    panelOf(name, rectangle(from, 0, to, height), label === undefined ? {} : { label });
  const hinge = (name: string, x: number, moving: number, ajar: number) =>
    foldAlong(
      name,
      [
        [x, 0],
        [x, height],
      ],
      [moving, height / 2],
      { angle: 90, ajar },
    );
  const fill: FillStep[] =
    spec.contents === undefined ? [] : [{ kind: 'fill', name: 'contents', pockets: ['pocket'] }];
  return programOn(
    [
      panel('left door', 0, leftHinge),
      panel('left hinge', leftHinge, left, 'hinge'),
      panel('middle', left, right),
      panel('right hinge', right, rightHinge, 'hinge'),
      panel('right door', rightHinge, end),
      ...pocketPanels(pocket),
    ],
    [
      ...tabFolds(pocket),
      foldAlong(
        'pocket',
        [
          [left, height],
          [right, height],
        ],
        [(left + right) / 2, height + pocketHeight],
      ),
      heldStep(pocket),
      hinge('left hinge at the middle', left, 0, 60),
      hinge('left hinge at its door', leftHinge, 0, 45),
      hinge('right hinge at the middle', right, end, 40),
      hinge('right hinge at its door', rightHinge, end, 20),
      ...fill,
    ],
  );
}

const heldStep = (pocket: BottomPocket): GlueStep | LockStep =>
  pocket.locked === undefined
    ? {
        kind: 'glue',
        name: 'glue at the pocket',
        holds: 'pocket',
        strips: pocketStrips(pocket),
        width: pocket.glueWidth,
        inset: glueKeepOut.edge,
        lines: 1,
        keepFree: 'Keep it on the tabs, or the pocket is shut.',
      }
    : { kind: 'lock', name: 'lock the pocket', holds: 'pocket tabs', locks: pocketLocks(pocket) };
