import type { FillStep, FoldProgram, FoldStep, Panel, TuckStep } from '../../creases/fold-program.ts';
import { usualGlueWidth } from '../../creases/glue-keep-out.ts';
import { at } from '../common/dimension.ts';
import type { Dimensions } from '../style.ts';
import { b, blank, H, h, o, S, t, W } from './dimensions.ts';
import { cornerGlue, hemGlue, type SleeveGlue, seamGlue } from './glue.ts';
import { sleevePanels } from './panels.ts';
import { pockets as pocketPlaces } from './pockets.ts';
import type { TwinSleeveSpec } from './spec.ts';

const panels = (d: Dimensions): Panel[] =>
  sleevePanels(
    { 'left hem': at(d, h), front: at(d, W), spine: at(d, S), back: at(d, W), 'right hem': at(d, h) },
    { 'top flap': at(d, t), '': at(d, H), 'bottom flap': at(d, b) },
  );

/** At each end the hems of the two flaps are slipped into each other, which holds the seam while it is glued. */
function tucks(spec: TwinSleeveSpec): TuckStep[] {
  if (spec.seam === 'flat') return [];
  return ['left hem', 'right hem'].map((hem) => ({
    kind: 'tuck',
    name: `tuck at the ${hem}`,
    // Hems turned out lie over their flap, so the top flap's closes over the bottom flap; turned in, the
    // bottom flap's hem lies under it and goes under the top flap.
    ...(spec.hem?.turn === 'in'
      ? { panel: `bottom flap, ${hem}`, to: 'below', of: `top flap, ${hem}` }
      : { panel: `top flap, ${hem}`, to: 'above', of: `bottom flap, ${hem}` }),
  }));
}

/** Without contents in the spec there is nothing to slide in. */
const fill = ({ contents }: TwinSleeveSpec): FillStep[] =>
  contents === undefined
    ? []
    : [{ kind: 'fill', name: 'contents', pockets: pocketPlaces.map(({ name }) => name) }];

/** How the blank is folded, glued and filled. */
export function program(spec: TwinSleeveSpec, d: Dimensions): FoldProgram {
  const { width, height } = blank(d);
  const hem = at(d, h);
  const mitred = spec.corners === 'mitred';
  const point = (x: number, y: number) => ({ x, y });
  const vertical = (x: number) => ({ from: point(x, 0), to: point(x, height) });
  const horizontal = (y: number) => ({ from: point(0, y), to: point(width, y) });
  const fold = (name: string, rest: Pick<FoldStep, 'line' | 'moving'> & Partial<FoldStep>): FoldStep => ({
    kind: 'fold',
    name,
    direction: 'toward',
    angle: 180,
    ...rest,
  });
  const corner = (name: string, x: number, y: number): FoldStep => {
    const line = { from: point(Math.abs(x - hem), y), to: point(x, Math.abs(y - hem)) };
    return fold(name, { line, moving: point(x, y) });
  };
  const spine = (cover: string, x: number, movingX: number): FoldStep =>
    fold(`spine at the ${cover}`, {
      line: vertical(x),
      moving: point(movingX, height / 2),
      angle: 90,
      ajar: 55,
    });
  const corners = [
    corner('top left corner', 0, 0),
    corner('top right corner', width, 0),
    corner('bottom right corner', width, height),
    corner('bottom left corner', 0, height),
  ];
  const turn = spec.hem?.turn === 'in' ? 'toward' : 'away';
  const firstSpine = hem + at(d, W);
  const secondSpine = firstSpine + at(d, S);
  const bottomFold = at(d, t) + at(d, H);
  const sleeve: SleeveGlue = {
    panelWidth: at(d, W),
    panelHeight: at(d, H),
    spine: at(d, S),
    hem,
    topFlap: at(d, t),
    bottomFlap: at(d, b),
    overlap: at(d, o),
    hemsOut: spec.hem?.turn !== 'in',
    tucked: spec.seam !== 'flat',
    mitred,
    glueWidth: spec.glue?.width ?? usualGlueWidth,
  };
  const tips = corners.flatMap(({ line }, index) =>
    index % 2 === 0 ? [line.to, line.from] : [line.from, line.to],
  );
  return {
    outline: mitred ? tips : [point(0, 0), point(width, 0), point(width, height), point(0, height)],
    panels: panels(d),
    steps: [
      ...(mitred ? [] : corners),
      ...cornerGlue(sleeve),
      fold('left hem', { line: vertical(hem), moving: point(0, height / 2), direction: turn }),
      fold('right hem', { line: vertical(width - hem), moving: point(width, height / 2), direction: turn }),
      ...hemGlue(sleeve),
      fold('top flap', { line: horizontal(at(d, t)), moving: point(width / 2, 0) }),
      fold('bottom flap', { line: horizontal(bottomFold), moving: point(width / 2, height) }),
      ...tucks(spec),
      ...seamGlue(sleeve),
      spine('front', firstSpine, 0),
      spine('back', secondSpine, width),
      ...fill(spec),
    ],
  };
}
