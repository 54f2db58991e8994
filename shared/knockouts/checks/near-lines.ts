import { type Edge, isCrease } from '../../creases/crease-pattern.ts';
import { flattenShape } from '../../geometry/flatten.ts';
import { move, type Point } from '../../geometry/plane.ts';
import type { PlacedKnockout } from '../placed.ts';
import { type Gap, gapToSegment } from './distances.ts';
import type { Checked, Finding } from './finding.ts';
import { mouthsIn } from './mouths.ts';

type LineKind = 'score' | 'edge' | 'mouth';

/** What is said of an opening that comes near to a line of a kind. */
const words = {
  score: { code: 'near-score', what: 'a score', why: 'the fold pulls at the opening', limit: 'toScore' },
  edge: { code: 'near-edge', what: 'the paper’s edge', why: 'narrow edges bend and tear', limit: 'toEdge' },
  mouth: { code: 'near-mouth', what: 'a pocket’s mouth', why: 'it is pulled at there', limit: 'toMouth' },
} as const;

/** Openings that come near to scores, edges and mouths without reaching them; what is put there on purpose is left out. */
export const nearLines = (checked: Checked): readonly Finding[] =>
  checked.list.flatMap((knockout) => (knockout.atEdge ? [] : nearest(knockout, checked)));

function nearest(knockout: PlacedKnockout, checked: Checked): Finding[] {
  const { pattern } = checked.folded;
  const outlines = flattenShape(knockout.onBlank);
  const found = new Map<LineKind, Gap>();
  const crossed = new Set<Edge>();
  const seen = new Set<Edge>();
  for (const { faces } of knockout.cuts) {
    for (const { index } of faces) {
      for (const edge of edgesOf(index, checked)) {
        if (edge.letter === 'F' || seen.has(edge)) continue;
        seen.add(edge);
        const [from, to] = endsOf(edge, checked);
        const gap = gapToSegment(outlines, from, to);
        if (gap.distance === 0) {
          crossed.add(edge);
          continue;
        }
        const kind = kindOf(edge, index, checked);
        if (gap.distance < (found.get(kind)?.distance ?? Infinity)) found.set(kind, gap);
      }
    }
  }
  const reached = new Set([...crossed].map((edge) => (isCrease(edge) ? 'score' : 'edge')));
  return [...found].flatMap(([kind, gap]) => {
    // what is cut across an edge or a score is told as that
    if (kind !== 'mouth' && reached.has(kind)) return [];
    return gap.distance < checked.limits[words[kind].limit] ? [finding(knockout, kind, gap, checked)] : [];
  });

  function edgesOf(face: number, { layers }: Checked): readonly Edge[] {
    const corners = layers.corners[face] ?? [];
    const ends = new Set(corners);
    return pattern.edges.filter((edge) => edge.ends.every((end) => ends.has(end)));
  }
}

function endsOf({ ends }: Edge, { folded }: Checked): readonly [Point, Point] {
  const [from, to] = ends.map((end) => folded.pattern.vertices[end]);
  if (!from || !to) throw new Error('an edge has an end that is no vertex');
  return [from, to];
}

/** A crease or border that lies at a pocket's mouth is told as that. */
function kindOf(edge: Edge, face: number, checked: Checked): LineKind {
  const lies = checked.layers.faces[face]?.lies;
  const panel = checked.layers.faces[face]?.panel ?? '';
  const ends = endsOf(edge, checked);
  const isMouth =
    lies !== undefined &&
    mouthsIn(checked.folded).some(
      (mouth) => mouth.panels.has(panel) && ends.every((end) => mouth.isOn(move(lies, end))),
    );
  return isMouth ? 'mouth' : isCrease(edge) ? 'score' : 'edge';
}

function finding({ index, title }: PlacedKnockout, kind: LineKind, gap: Gap, checked: Checked): Finding {
  const { code, what, why, limit } = words[kind];
  const size = Math.round(gap.distance / 1e4) * 1e4;
  return {
    code,
    does: 'tell',
    knockouts: [index],
    message: `${title} comes within ${checked.say(size)} of ${what}: nearer than ${checked.say(checked.limits[limit])} ${why}`,
    remedy: 'move it away or make it smaller',
    brief: `${checked.say(size)} to ${what}`,
    size,
    limit: checked.limits[limit],
    at: [gap.at],
  };
}
