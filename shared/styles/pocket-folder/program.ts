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
import { b, H, p, S, W } from './dimensions.ts';
import { spineInset } from './model.ts';
import type { PocketFolderSpec } from './spec.ts';

const glued = [
  { name: 'front pocket', panel: 'front', ends: { left: 'tab', right: 'glue' } },
  { name: 'back pocket', panel: 'back', ends: { left: 'glue', right: 'tab' } },
] as const;

/** Both ends of a pocket that is not glued are held by tabs. */
const locked = glued.map((pocket) => ({ ...pocket, ends: { left: 'tab', right: 'tab' } }) as const);

const shapesFor = ({ join }: PocketFolderSpec) => (join === 'slots' ? locked : glued);

/** Both pockets stand open at their tops, their backs to each other when the folder is closed. */
export const pocketsFor = (spec: PocketFolderSpec) => shapesFor(spec).map(pocketPlace);

/** The same of a folder that is glued. */
export const pockets = glued.map(pocketPlace);

/** How the blank is folded, glued or locked, and filled. */
export function program(spec: PocketFolderSpec, d: Dimensions, caliper: Nm): FoldProgram {
  const [width, height, spine, pocket, tab] = [at(d, W), at(d, H), at(d, S), at(d, p), at(d, b)];
  const glueWidth = spec.glue?.width ?? usualGlueWidth;
  const firstSpine = tab + width;
  const secondSpine = firstSpine + spine;
  const end = secondSpine + width;
  const whole = end + tab;
  const paper = spec.join === 'slots' ? lockedPaper(spec, caliper) : undefined;
  const shared = { bottom: height, height: pocket, tab, glueWidth, locked: paper };
  // tabs at the spine lie side by side below it
  const inset = paper ? spineInset(spec, tab, spine) : 0;
  const [front, back] = shapesFor(spec);
  const both: readonly BottomPocket[] = [
    { ...front, ...shared, left: tab, right: firstSpine - inset },
    { ...back, ...shared, left: secondSpine + inset, right: end },
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
      paper ? lockStep(both) : glueStep(both, glueWidth),
      spineFold('front', firstSpine, 0),
      spineFold('back', secondSpine, whole),
      ...fill,
    ],
  );
}

const glueStep = (pockets: readonly BottomPocket[], width: Nm): GlueStep => ({
  kind: 'glue',
  name: 'glue at the pockets',
  holds: 'pockets',
  strips: pockets.flatMap(pocketStrips),
  width,
  inset: glueKeepOut.edge,
  lines: 1,
  keepFree: 'Keep it on the tabs and beside the spine, or the pockets are shut.',
});

const lockStep = (pockets: readonly BottomPocket[]): LockStep => ({
  kind: 'lock',
  name: 'lock the pockets',
  holds: 'pocket tabs',
  locks: pockets.flatMap(pocketLocks),
});
