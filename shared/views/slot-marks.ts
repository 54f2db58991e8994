import type { LockStep } from '../creases/fold-program.ts';
import type { Lock } from '../creases/lock.ts';
import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import { move } from '../geometry/plane.ts';
import type { FlatLook } from './flat-look.ts';
import { bowed, lengthened } from './motion-arrow.ts';
import type { Mark } from './picture.ts';

/** Tongues before they are pushed through, outlined also where they lie hidden, each with an arrow over its neck. */
export const slotMarks = (
  { locks }: LockStep,
  faces: readonly FlatFace[],
  look: FlatLook,
): readonly Mark[] => [
  {
    kind: 'line',
    line: 'slip',
    lines: locks.flatMap(({ tongue }) =>
      facesOf(faces, tongue).map(({ corners }) => [...corners, ...corners.slice(0, 1)].map(look.onPage)),
    ),
  },
  ...locks.flatMap((lock) => throughArrow(lock, faces, look)),
];

const facesOf = (faces: readonly FlatFace[], panel: string): readonly FlatFace[] =>
  faces.filter((face) => face.panel === panel);

function throughArrow(
  { panel, tongue, to, neck: [p, q] }: Lock,
  faces: readonly FlatFace[],
  look: FlatLook,
): readonly Mark[] {
  const [tab] = facesOf(faces, panel);
  const [slotted] = facesOf(faces, to);
  if (!tab || !slotted) return [];
  const { left, right, top, bottom } = boxOf(facesOf(faces, tongue).flatMap(({ corners }) => corners));
  const tip = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const neck = move(tab.lies, { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
  const start = { x: 2 * neck.x - tip.x, y: 2 * neck.y - tip.y };
  const [from, end] = lengthened(look.onPage(start), look.onPage(tip));
  const arrow = tab.height > slotted.height ? 'away' : 'toward';
  return [{ kind: 'arrow', arrow, from, to: end, by: bowed(from, end) }];
}
