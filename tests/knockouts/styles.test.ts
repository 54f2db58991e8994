import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { covers } from '../../shared/folding/flat-faces.ts';
import { type Folded, proofOf } from '../../shared/folding/proof-of.ts';
import { inverse, move } from '../../shared/geometry/plane.ts';
import { type Place, placesOf } from '../../shared/knockouts/places.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { styles } from '../../shared/styles/registry.ts';
import { CannotBeFolded } from '../../src/problem/cannot-be-folded.ts';
import { pointsAlong } from '../support/curve-points.ts';
import { drawCutOut, isWithin } from '../support/cut-out.ts';
import { groupNamed } from '../support/drawn.ts';
import type { At, ReadSvg } from '../support/read-svg.ts';
import { styleCases } from '../support/styles/index.ts';

/*
 * Knockouts know nothing of styles: what can be cut where follows from the folded form alone. Here a dot is put on
 * every place of every style, and what the drawing has of it is held against the faces that lie there.
 */

function foldedFrom(raw: object): Folded | undefined {
  const solution = solveFolder(folderSpec.parse(raw));
  return solution.ok ? proofOf(solution.plan) : undefined;
}

/** Closed lines of all that is cut, on the blank, whichever way it lies in the drawing. */
function cutLines(read: ReadSvg, turned: boolean): readonly (readonly At[])[] {
  const back = ({ x, y }: At): At => (turned ? { x: y, y: read.width - x } : { x, y });
  return ['knockout', 'cut'].flatMap((id) =>
    (groupNamed(read, id)?.paths ?? []).flatMap(({ subpaths }) =>
      subpaths.map(({ pieces }) => pieces.flatMap((piece) => pointsAlong(piece)).map(back)),
    ),
  );
}

/** Where a dot goes: off the middle, where creases are. */
const share = { x: 0.37, y: 0.41 };

/** Faces of a place under the dot, from the viewer on, with the dot's middle on the blank; none where a fold is near. */
function facesUnder(place: Place, { proof }: Folded, radius: number) {
  const { left, right, top, bottom, side } = place;
  const across = share.x * (right - left);
  const form = { x: side === 'inside' ? left + across : right - across, y: top + share.y * (bottom - top) };
  const clear = [-1, 0, 1].flatMap((dx) =>
    [-1, 0, 1].map((dy) => ({ x: form.x + dx * radius, y: form.y + dy * radius })),
  );
  const own = proof.faces.filter(({ index }) => place.faces.has(index));
  const there = own.filter((face) => covers(face, form.x, form.y));
  const isClear = own.every((face) => {
    const inside = clear.filter(({ x, y }) => covers(face, x, y)).length;
    return inside === 0 || inside === clear.length;
  });
  const ordered = there.toSorted((one, other) =>
    side === 'inside' ? other.height - one.height : one.height - other.height,
  );
  return isClear ? ordered.map((face) => ({ face, at: move(inverse(face.lies), form) })) : [];
}

/** Nanometres. */
const radius = 1.6e6;

function faultsOn(
  raw: object,
  folded: Folded,
): { readonly faults: readonly string[]; readonly asked: number } {
  const faults: string[] = [];
  let asked = 0;
  for (const place of placesOf(folded)) {
    const under = facesUnder(place, folded, 1.3 * radius);
    if (under.length === 0) continue;
    for (const through of ['seen-layer', 'every-layer']) {
      const { left, right, top, bottom } = place;
      const knockout = {
        kind: 'figure',
        on: {
          place: place.name,
          anchor: 'top left',
          offset: {
            right: `${inMm(Math.round(share.x * (right - left) - radius))} mm`,
            down: `${inMm(Math.round(share.y * (bottom - top) - radius))} mm`,
          },
        },
        figure: { shape: 'circle', diameter: `${inMm(2 * radius)} mm` },
        through,
      };
      const drawn = drawCutOut({ ...raw, convention: { outline: 'never' }, knockouts: [knockout] });
      const lines = cutLines(drawn.read, drawn.plan.arrangement.drawingTurned);
      const cut = under.filter(({ at }) => isWithin(lines, { x: inMm(at.x), y: inMm(at.y) }));
      const wanted = through === 'seen-layer' ? under.slice(0, 1) : under;
      asked++;
      if (cut.map(({ face }) => face.index).join() !== wanted.map(({ face }) => face.index).join())
        faults.push(`${place.name}, ${through}: ${cut.length} of ${wanted.length} layers`);
    }
  }
  return { faults, asked };
}

describe.each(styleCases)('on a $style', ({ style, example, specs }) => {
  it('every place has a name of its own, and a dot on it is cut in the layers that lie there', () => {
    const folded = foldedFrom(example);
    if (!folded) throw new Error('the example does not fold');
    const names = placesOf(folded).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    const { faults, asked } = faultsOn(example, folded);
    expect(faults).toEqual([]);
    expect(asked).toBeGreaterThan(1);
  });

  it('whatever its measures', () => {
    for (const raw of fc.sample(specs, { numRuns: 3 })) {
      const folded = foldedFrom(raw);
      if (folded) expect(faultsOn(raw, folded).faults).toEqual([]);
    }
  });

  it('rounded corners and notches are cut, or refused with a reason', () => {
    const folded = foldedFrom(example);
    if (!folded) throw new Error('the example does not fold');
    const [first] = placesOf(folded);
    const pockets = styles.find(({ name }) => name === style)?.pockets ?? [];
    const knockouts = [
      ...(first
        ? [{ kind: 'rounded-corners', place: first.name, radius: '3 mm', corners: ['top left'] }]
        : []),
      ...pockets.map(({ name }) => ({ kind: 'thumb-notch', pocket: name, radius: '5 mm' })),
    ];
    for (const knockout of knockouts) {
      try {
        const { folded: cut } = drawCutOut({ ...example, knockouts: [knockout] });
        // a tag's corners are off already, and a sleeve may have a notch of its own
        const isEmpty = cut.knockouts?.findings.some(({ code }) => code === 'nothing-cut');
        expect(cut.knockouts?.openings.length === 0).toBe(isEmpty);
      } catch (error) {
        if (!(error instanceof CannotBeFolded)) throw error;
        expect(error.refusal.errors[0]?.path).toMatch(/^\/knockouts\/0/u);
      }
    }
  });
});

it('every style is among them', () => {
  expect(styleCases.map(({ style }) => style).toSorted()).toEqual(styles.map(({ name }) => name).toSorted());
});
