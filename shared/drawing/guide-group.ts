import type { Convention } from './convention.ts';
import type { Drawing, GuideKind, GuideZone } from './drawing.ts';
import type { FigurePath } from './figure.ts';
import { groupOf, inOrder, type LayerStyle, merge, type Ordered, usualLayer } from './layer-style.ts';
import { LinesOnce } from './lines-once.ts';
import { contourData, openLineData } from './path-data.ts';
import type { Placement } from './placement.ts';

type Layers = NonNullable<Convention['layers']>;
type Face = GuideZone['face'];

/** A pen draws before anything is cut loose. */
const usualOrder = 5;
const colour = '#0072B2';

interface Kind {
  readonly kind: GuideKind;
  readonly member: 'guideGlue' | 'guideBare' | 'guideKeepOut';
  readonly id: string;
  readonly title: string;
  /** As it is drawn where a convention says nothing, on the face that lies up and on the other. */
  readonly up: LayerStyle;
  readonly down: LayerStyle;
}

/** What is on the face that lies down is dashed, as hidden outlines are (ISO 128-2, from memory). */
const kinds: readonly Kind[] = Object.freeze([
  {
    kind: 'glue',
    member: 'guideGlue',
    id: 'guide-glue',
    title: 'Guide, never cut: tape or glue',
    up: usualLayer(colour, 'continuous', 0),
    down: usualLayer(colour, 'dashed', 0),
  },
  {
    kind: 'bare',
    member: 'guideBare',
    id: 'guide-bare',
    title: 'Guide, never cut: what the glue meets, best left without print',
    up: usualLayer(colour, 'long-dashed dotted', 1),
    down: usualLayer(colour, 'long-dashed dotted', 1),
  },
  {
    kind: 'keepOut',
    member: 'guideKeepOut',
    id: 'guide-keep-out',
    title: 'Guide, never cut: lines that glue must not pass',
    up: usualLayer(colour, 'dotted', 2),
    down: usualLayer(colour, 'dotted', 2),
  },
]);

const styleOf = (usual: LayerStyle, { member }: Kind, layers: Layers): LayerStyle =>
  merge(merge(usual, { ...layers.guide, order: usual.order }), layers[member]);

const isAskedFor = (kind: Kind, layers: Layers): boolean =>
  (layers.guide ?? layers[kind.member]) !== undefined && !styleOf(kind.up, kind, layers).off;

/** Whether a convention asks for any part of the guide, which is left out by default. */
export const asksForGuide = ({ layers = {} }: Convention = {}): boolean =>
  kinds.some((kind) => isAskedFor(kind, layers));

/**
 * The guide as a group of groups, one for each kind and face; a line that two zones share is drawn once. Undefined where
 * the convention does not ask for it.
 */
export function guideGroup({ guide = [] }: Drawing, chosen: Convention, placement: Placement): Ordered {
  if (!asksForGuide(chosen)) return undefined;
  const layers = chosen.layers ?? {};
  const up: Face = chosen.sheetLies === 'outside-up' ? 'outside' : 'inside';
  const faces: readonly Face[] = layers.guide?.faces === 'up' ? [up] : ['inside', 'outside'];
  const once = new LinesOnce();
  const groups = kinds
    .filter((kind) => isAskedFor(kind, layers))
    .flatMap((kind) =>
      faces.map((face) => {
        const zones = guide.filter((zone) => zone.kind === kind.kind && zone.face === face);
        const paths = zones.flatMap((zone) => zonePath(zone, once, placement));
        if (paths.length === 0) return undefined;
        const style = styleOf(face === up ? kind.up : kind.down, kind, layers);
        return groupOf(`${kind.id}-${face}`, `${kind.title}, on the ${face} face`, style, placement, paths);
      }),
    );
  return {
    order: layers.guide?.order ?? usualOrder,
    group: {
      id: 'guide',
      title: 'Guide, never cut',
      attributes: {},
      paths: [],
      groups: inOrder(groups),
    },
  };
}

/** What is to be said of a drawing that has the guide. */
export const guideNote = (chosen: Convention): readonly string[] =>
  asksForGuide(chosen)
    ? ['The guide shows where glue goes and is never cut: draw it with a pen, or hide it before you cut.']
    : [];

function zonePath({ id, contours }: GuideZone, once: LinesOnce, placement: Placement): FigurePath[] {
  const data = contours
    .flatMap((contour) => {
      const left = once.leftOf(contour);
      return 'whole' in left
        ? [contourData(left.whole, placement)]
        : left.lines.map((line) => openLineData(line, placement));
    })
    .filter((text) => text !== '');
  return data.length === 0 ? [] : [{ id, data: data.join(' ') }];
}
