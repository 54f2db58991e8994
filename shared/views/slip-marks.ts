import type { TuckStep } from '../creases/fold-program.ts';
import { boxOf, type FlatFace } from '../folding/flat-faces.ts';
import type { FlatLook } from './flat-look.ts';
import { bowed, lengthened } from './motion-arrow.ts';
import type { Mark, PagePoint } from './picture.ts';

/** What is slipped, outlined also where it lies hidden, and an arrow from it to what it goes over or under. */
export function slipMarks(step: TuckStep, faces: readonly FlatFace[], look: FlatLook): readonly Mark[] {
  const middleOf = (panel: string): PagePoint => {
    const { left, right, top, bottom } = boxOf(
      faces.filter((face) => face.panel === panel).flatMap(({ corners }) => corners),
    );
    return look.onPage({ x: (left + right) / 2, y: (top + bottom) / 2 });
  };
  const outlines = faces
    .filter(({ panel }) => panel === step.panel)
    .map(({ corners }) => [...corners, ...corners.slice(0, 1)].map(look.onPage));
  const [from, to] = lengthened(middleOf(step.panel), middleOf(step.of));
  return [
    { kind: 'line', line: 'slip', lines: outlines },
    {
      kind: 'arrow',
      arrow: step.to === 'above' ? 'toward' : 'away',
      from,
      to,
      by: bowed(from, to),
    },
  ];
}
