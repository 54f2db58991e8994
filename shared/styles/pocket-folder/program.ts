import type { FillStep, FoldProgram } from '../../creases/fold-program.ts';
import { glueKeepOut, usualGlueWidth } from '../../creases/glue-keep-out.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import {
  type BottomPocket,
  pocketPanels,
  pocketPlace,
  pocketStrips,
  tabFolds,
} from '../common/bottom-pocket.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, H, p, S, W } from './dimensions.ts';
import type { PocketFolderSpec } from './spec.ts';

const frontPocket = { name: 'front pocket', panel: 'front', ends: { left: 'tab', right: 'glue' } } as const;
const backPocket = { name: 'back pocket', panel: 'back', ends: { left: 'glue', right: 'tab' } } as const;

/** Both pockets stand open at their tops, their backs to each other when the folder is closed. */
export const pockets = [frontPocket, backPocket].map(pocketPlace);

/** How the blank is folded, glued and filled. */
export function program(spec: PocketFolderSpec, d: Dimensions): FoldProgram {
  const [width, height, spine, pocket, tab] = [at(d, W), at(d, H), at(d, S), at(d, p), at(d, b)];
  const glueWidth = spec.glue?.width ?? usualGlueWidth;
  const firstSpine = tab + width;
  const secondSpine = firstSpine + spine;
  const end = secondSpine + width;
  const whole = end + tab;
  const shared = { bottom: height, height: pocket, tab, glueWidth };
  const both: readonly BottomPocket[] = [
    { ...frontPocket, ...shared, left: tab, right: firstSpine },
    { ...backPocket, ...shared, left: secondSpine, right: end },
  ];
  const cover = (name: string, left: number, right: number) =>
    panelOf(name, rectangle(left, 0, right, height), { label: name === 'spine' ? name : `${name} cover` });
  const spineFold = (name: string, x: number, moving: number) =>
    foldAlong(
      `spine at the ${name}`,
      [
        [x, 0],
        [x, height],
      ],
      [moving, height / 2],
      { angle: 90, ajar: 55 },
    );
  const fill: FillStep[] =
    spec.contents === undefined
      ? []
      : [{ kind: 'fill', name: 'contents', pockets: pockets.map(({ name }) => name) }];
  return programOn(
    [
      cover('front', tab, firstSpine),
      cover('spine', firstSpine, secondSpine),
      cover('back', secondSpine, end),
      ...both.flatMap(pocketPanels),
    ],
    [
      ...both.flatMap(tabFolds),
      foldAlong(
        'pockets',
        [
          [0, height],
          [whole, height],
        ],
        [whole / 2, height + pocket],
      ),
      {
        kind: 'glue',
        name: 'glue at the pockets',
        holds: 'pockets',
        strips: both.flatMap(pocketStrips),
        width: glueWidth,
        inset: glueKeepOut.edge,
        lines: 1,
        keepFree: 'Keep it on the tabs and beside the spine, or the pockets are shut.',
      },
      spineFold('front', firstSpine, 0),
      spineFold('back', secondSpine, whole),
      ...fill,
    ],
  );
}
