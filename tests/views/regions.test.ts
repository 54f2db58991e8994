import { describe, expect, test } from 'vitest';
import { anglesAjar } from '../../shared/folding/angles.ts';
import { appearancesOf } from '../../shared/folding/appearance.ts';
import { boxOf } from '../../shared/folding/flat-faces.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { styleOf } from '../../shared/styles/registry.ts';
import { depthIn, signedArea } from '../../shared/views/convex.ts';
import { flatLook } from '../../shared/views/flat-look.ts';
import { lastForm } from '../../shared/views/flat-scene.ts';
import { plainMarks } from '../../shared/views/move-marks.ts';
import { paint } from '../../shared/views/painted.ts';
import { printUps } from '../../shared/views/sheet-prints.ts';
import { posedLook } from '../../shared/views/solid-look.ts';
import { seenOf, type VisibleRegion } from '../../shared/views/visible.ts';
import { exampleNames, folded, shown } from './shown.ts';

const seenFrom = (one: Folded, side: 'outside' | 'inside') => {
  const look = flatLook(one.pattern, lastForm(one), side, 1);
  return seenOf(paint(one.pattern, lastForm(one), look, printUps(one.plan)));
};

const areaOf = ({ pieces }: Pick<VisibleRegion, 'pieces'>): number =>
  pieces.reduce((sum, piece) => sum + Math.abs(signedArea(piece)), 0);

describe.each(exampleNames)('%s', (name) => {
  const one = folded(name);
  test.each(['outside', 'inside'] as const)(
    'what is seen from %s covers the flat form exactly once',
    (side) => {
      const flat = styleOf(one.plan.spec).flat(one.plan.dimensions, one.plan.spec);
      const sum = seenFrom(one, side).reduce((total, seen) => total + areaOf(seen), 0);
      expect(sum).toBeCloseTo((flat.width * flat.height) / 1e12, 1);
    },
  );

  test.each(['outside', 'inside'] as const)(
    'from %s the proof’s regions appear, each with its face',
    (side) => {
      const drawn = new Set(seenFrom(one, side).map(({ face }) => `${face.part}, ${face.paper} face`));
      const proved = (appearancesOf(one).find(({ view }) => view === side)?.regions ?? []).map(
        ({ part, face }) => `${part}, ${face} face`,
      );
      expect(drawn.size).toBeGreaterThan(2);
      expect([...drawn].toSorted()).toEqual([...new Set(proved)].toSorted());
    },
  );

  test.each(['outside', 'inside'] as const)('from %s the nearest layer is seen at every spot', (side) => {
    const seen = seenFrom(one, side);
    const { left, right, top } = boxOf(one.proof.faces.flatMap(({ corners }) => corners));
    expect(one.proof.spots.length).toBeGreaterThan(20);
    for (const { x, y, stack } of one.proof.spots) {
      const nearest = side === 'inside' ? stack.at(-1) : stack[0];
      const point = { x: (side === 'inside' ? x - left : right - x) / 1e6, y: (y - top) / 1e6 };
      const within = (depth: number) =>
        seen
          .filter(({ pieces }) => pieces.some((piece) => depthIn(piece, point) > depth))
          .map(({ face }) => face.index);
      // a spot may lie on an edge between two regions
      expect(within(-0.001)).toContain(nearest?.index);
      expect(within(0.001).filter((index) => index !== nearest?.index)).toEqual([]);
    }
  });

  test.each(['outside', 'inside', 'closed', 'half-open'] as const)(
    '%s has an arrow on each region',
    (view) => {
      const marks = plainMarks(shown(name, view).marks);
      const keys = (kind: 'face' | 'arrow') =>
        new Set(
          marks.flatMap((mark) =>
            mark.kind === kind && mark.part !== undefined && mark.part !== 'legend'
              ? [`${mark.part}, ${mark.paper}`]
              : [],
          ),
        );
      const arrows = keys('arrow');
      expect(arrows.size).toBeGreaterThan(1);
      for (const key of arrows) expect(keys('face')).toContain(key);
    },
  );
});

describe('the standing book', () => {
  test.each(exampleNames)('of %s shows the front cover from outside, wholly, and the back pocket', (name) => {
    const one = folded(name);
    const look = posedLook(one, anglesAjar(one.program), { width: 200, height: 200 });
    const seen = seenOf(paint(one.pattern, lastForm(one), look, printUps(one.plan)));
    const cover = seen.filter(({ face }) => face.part === 'front');
    expect(new Set(cover.map(({ face }) => face.paper))).toEqual(new Set(['outside']));
    const fronts = seen.filter(({ face }) => face.part === 'bottom flap, back');
    expect(fronts.map(({ face }) => face.paper)).toContain('outside');
    expect(seen.map(({ face }) => face.part)).not.toContain('back');
    // parallel projection: the front leaf is a parallelogram, and nothing lies before it
    const front = seen.filter(
      ({ face }) => look.leaves[face.index] === look.leaves[cover[0]?.face.index ?? -1],
    );
    const { width, height } = styleOf(one.plan.spec).closed(one.plan.dimensions, one.plan.spec);
    const at = (x: number, y: number) => {
      const index = cover[0]?.face.index ?? -1;
      const { left, top } = one.proof.faces
        .filter(({ panel }) => panel === 'front')
        .reduce((box, face) => ({ left: Math.min(box.left, face.left), top: Math.min(box.top, face.top) }), {
          left: Number.POSITIVE_INFINITY,
          top: Number.POSITIVE_INFINITY,
        });
      return look.at(index, { x: left + x * width, y: top + y * height });
    };
    const outline = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];
    const total = front.reduce((sum, { pieces }) => sum + areaOf({ pieces }), 0);
    expect(total).toBeCloseTo(Math.abs(signedArea(outline)), 1);
    // nearer to the viewer is lower on the page, as one looks down: the mouth stands before the spine
    expect(at(0, 1).y).toBeGreaterThan(at(1, 1).y);
    expect(at(0, 1).x).toBeGreaterThan(at(1, 1).x);
  });
});
