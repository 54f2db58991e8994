import { after, carry, hinge, type Motion, type Point3, still } from '../../../shared/folding/space.ts';
import type { Hinge, Solid } from '../ask/solid.ts';

/** A crease as one of its two faces sees it. */
interface Way {
  readonly hinge: Hinge;
  readonly other: number;
  readonly from: number;
  readonly to: number;
}

const mix = (one: number, other: number, share: number): number => one + (other - one) * share;

/** What lies beyond the creases of each face. */
function waysOf({ faces, hinges }: Solid): readonly (readonly Way[])[] {
  const ways: Way[][] = faces.map(() => []);
  for (const each of hinges) {
    const [one, other] = each.faces;
    ways[one]?.push({ hinge: each, other, from: each.from, to: each.to });
    ways[other]?.push({ hinge: each, other: one, from: each.to, to: each.from });
  }
  return ways;
}

/**
 * Folds a solid as far as is asked for.
 * @returns for a moment, such as 2.5 for two steps and half of the third, the corners of each face in millimetres: x
 * right, y down, z toward the viewer; layers lie one caliper apart. With a height, the corners lie that far above the
 * faces, out of their insides.
 */
export function folder(solid: Solid): (at: number, height?: number) => readonly (readonly Point3[])[] {
  const ways = waysOf(solid);
  const flat = (corner: number) => {
    const [x, y] = solid.vertices[corner] ?? [0, 0];
    return { x, y };
  };
  return (at, height = 0) => {
    const step = Math.min(Math.floor(at), solid.steps - 1);
    const share = at - step;
    const angle = ({ angles, between }: Hinge): number =>
      mix(angles[step] ?? 0, angles[step + 1] ?? 0, share) + (between[step] ?? 0) * Math.sin(Math.PI * share);
    const motions: (Motion | undefined)[] = solid.faces.map((_, face) =>
      face === solid.root ? still : undefined,
    );
    const queue = [solid.root];
    for (const face of queue) {
      for (const way of ways[face] ?? []) {
        if (motions[way.other]) continue;
        const turn = hinge(flat(way.from), flat(way.to), -angle(way.hinge));
        motions[way.other] = after(motions[face] ?? still, turn);
        queue.push(way.other);
      }
    }
    const [before, then] = [solid.lifts[step], solid.lifts[step + 1]];
    return solid.faces.map((corners, face) => {
      const z = mix(before?.[face] ?? 0, then?.[face] ?? 0, share) * solid.caliper + height;
      return corners.map((corner) => carry(motions[face] ?? still, { ...flat(corner), z }));
    });
  };
}
