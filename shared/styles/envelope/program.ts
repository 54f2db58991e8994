import type { FillStep, FoldProgram } from '../../creases/fold-program.ts';
import { usualGlueWidth } from '../../creases/glue-keep-out.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import { foldAlong, panelOf, programOn, rectangle } from '../common/blank.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { s } from './dimensions.ts';
import { flapGum, sideGlue } from './glue.ts';
import { backEnd, frontOf, levelFlap, shape, sideFlap } from './shape.ts';
import type { EnvelopeSpec } from './spec.ts';

/** The contents lie between the front with its side flaps and the back. */
export const pockets: readonly PocketPlace[] = [
  {
    name: 'envelope',
    panel: 'front',
    behind: ['left side', 'right side'],
    front: ['back'],
    mouth: 'top',
    closed: [
      { side: 'left', by: 'tab' },
      { side: 'right', by: 'tab' },
      { side: 'bottom', by: 'fold' },
    ],
  },
];

/** How the blank is folded, glued and filled. */
export function program(spec: EnvelopeSpec, d: Dimensions): FoldProgram {
  const pointed = spec.flaps === 'diagonal';
  const front = frontOf(d);
  const { left, right, top, bottom } = front;
  const end = backEnd(d);
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const across = (y: number) => [[left, y] as const, [right, y] as const] as const;
  const down = (x: number) => [[x, top] as const, [x, bottom] as const] as const;
  const fill: FillStep[] =
    spec.contents === undefined ? [] : [{ kind: 'fill', name: 'contents', pockets: ['envelope'] }];
  const side = { label: 'side flap', labels: 'side flaps' };
  return programOn(
    [
      panelOf('front', rectangle(left, top, right, bottom)),
      panelOf('left side', sideFlap(front, 'left', at(d, s), pointed), side),
      panelOf('right side', sideFlap(front, 'right', at(d, s), pointed), side),
      panelOf('closing flap', levelFlap(front, top, 0, shape.flapTaper, pointed)),
      panelOf('back', levelFlap(front, bottom, end, shape.backTaper, pointed)),
    ],
    [
      foldAlong('left side flap', down(left), [0, middle.y]),
      foldAlong('right side flap', down(right), [right + at(d, s), middle.y]),
      foldAlong('back', across(bottom), [middle.x, end]),
      sideGlue(d, pointed, spec.glue?.width ?? usualGlueWidth),
      ...fill,
      foldAlong('closing flap', across(top), [middle.x, 0], { ajar: 35 }),
      flapGum(d, pointed),
    ],
  );
}
