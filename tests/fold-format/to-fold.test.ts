import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { movesPaper } from '../../shared/creases/fold-program.ts';
import { toFoldAxes } from '../../shared/fold-format/fold-axes.ts';
import { type FoldDocument, type FoldFrame, foldDocument } from '../../shared/fold-format/fold-document.ts';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import { easySleeve, everyKind, foldedFrom, sleeves } from '../support/sleeves.ts';

/*
 * FOLD 1.2, https://github.com/edemaine/fold/blob/main/doc/spec.md. Its sign rules are tested by what they say of
 * the geometry: normals, left and right, above and below, worked out here from coordinates alone.
 */

type Vector = readonly [number, number, number];

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const sheet = (raw: object): FoldDocument => toFold(foldedFrom(raw), 'test');

/** Corners of a face in some frame's coordinates. */
const cornersOf = (file: FoldDocument, coords: FoldDocument['vertices_coords'], face: number): Vector[] =>
  (file.faces_vertices[face] ?? []).map((vertex) => {
    const [x = Number.NaN, y = Number.NaN, z = 0] = coords[vertex] ?? [];
    return [x, y, z];
  });

/** Right-hand rule: counter-clockwise corners, normal toward the viewer. Newell's method. */
const normalOf = (corners: readonly Vector[]): Vector =>
  corners.reduce<Vector>(
    (sum, corner, index) => {
      const [x, y, z] = cross(corner, corners[(index + 1) % corners.length] ?? corner);
      return [sum[0] + x, sum[1] + y, sum[2] + z];
    },
    [0, 0, 0],
  );

const middleOf = (corners: readonly Vector[]): Vector => {
  const mean = (axis: 0 | 1 | 2) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  return [mean(0), mean(1), mean(2)];
};

function frameOf(file: FoldDocument, title: string): FoldFrame {
  const frame = file.file_frames.find(({ frame_title }) => frame_title === title);
  if (!frame) throw new Error(`there is no frame ${title}`);
  return frame;
}

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

test('any sleeve gives a file that its schema accepts, with numbers of at most 6 decimals and no -0', () => {
  fc.assert(
    fc.property(sleeves, (raw) => {
      const file = sheet(raw);
      expect(foldDocument.parse(file)).toEqual(file);
      for (const number of numbersIn(file)) {
        expect(Object.is(number, -0)).toBe(false);
        expect(Number(number.toFixed(6))).toBe(number);
      }
      expect(JSON.parse(JSON.stringify(file))).toEqual(file);
    }),
    { numRuns: 60, seed: 61 },
  );
});

test('the same spec gives the same file', () => {
  expect(JSON.stringify(sheet(easySleeve))).toBe(JSON.stringify(sheet(easySleeve)));
});

describe('the key frame', () => {
  const file = sheet(easySleeve);

  test('says what it is', () => {
    expect(file).toMatchObject({
      file_spec: 1.2,
      file_creator: 'test',
      file_title: 'Twin sleeve',
      file_classes: ['singleModel', 'diagrams'],
      frame_classes: ['creasePattern'],
      frame_unit: 'mm',
    });
    expect(file.frame_attributes).toEqual(expect.arrayContaining(['2D', 'nonSelfTouching', 'convexFaces']));
    // custom members carry a colon (Custom Properties), all others are FOLD's own
    expect(Object.keys(file).filter((key) => key.includes('hemfold'))).toEqual([
      'edges_hemfold:step',
      'faces_hemfold:panel',
    ]);
  });

  test('lies with its bottom left corner at 0, 0 and y up', () => {
    const xs = file.vertices_coords.map(([x = Number.NaN]) => x);
    const ys = file.vertices_coords.map(([, y = Number.NaN]) => y);
    expect([Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]).toEqual([0, 270, 0, 320]);
    // the top flap, 60 mm, is at the top: y from 260 to 320
    const top = file['faces_hemfold:panel'].indexOf('top flap, front');
    const at = cornersOf(file, file.vertices_coords, top).map(([, y]) => y);
    expect([Math.min(...at), Math.max(...at)]).toEqual([260, 320]);
  });

  test('has a letter for each edge that agrees with its angle (edges_foldAngle)', () => {
    const sign = { B: 0, F: 0, V: 1, M: -1 };
    const signs = file.edges_foldAngle.map(Math.sign);
    expect(signs.map((each) => each + 0)).toEqual(file.edges_assignment.map((letter) => sign[letter]));
    expect(file.edges_assignment).not.toContain('F');
    expect(new Set(file.edges_foldAngle.map(Math.abs))).toEqual(new Set([0, 90, 180]));
  });

  test('names the step of each crease, and none for the border', () => {
    for (const [edge, step] of file['edges_hemfold:step'].entries())
      expect(step === null).toBe(file.edges_assignment[edge] === 'B');
    expect(new Set(file['edges_hemfold:step']).size).toBe(4 + 2 + 2 + 2 + 1);
  });
});

describe.each(everyKind)('the mesh: corners $corners, hems $hem.turn, seam $seam', (raw) => {
  const file = sheet(raw);

  test('has faces counter-clockwise (faces_vertices)', () => {
    for (const [face] of file.faces_vertices.entries())
      expect(normalOf(cornersOf(file, file.vertices_coords, face))[2]).toBeGreaterThan(0);
  });

  test('has edges that run along their face (faces_edges)', () => {
    expect(file.faces_edges).toHaveLength(file.faces_vertices.length);
    for (const [face, vertices] of file.faces_vertices.entries()) {
      const ends = vertices.map((from, index) => [from, vertices[(index + 1) % vertices.length]].toSorted());
      const edges = file.faces_edges[face]?.map((edge) => file.edges_vertices[edge]?.toSorted());
      expect(edges).toEqual(ends);
    }
  });

  test('has the face to the left of each edge first, then the one to its right (edges_faces)', () => {
    for (const [edge, [left, right]] of file.edges_faces.entries()) {
      const [u, v] = (file.edges_vertices[edge] ?? []).map((vertex): Vector => {
        const [x = Number.NaN, y = Number.NaN] = file.vertices_coords[vertex] ?? [];
        return [x, y, 0];
      });
      if (!u || !v) throw new Error(`edge ${edge} has no ends`);
      // y up: the left of u → v is where the cross product points toward the viewer
      const sideOf = (face: number) =>
        Math.sign(cross(minus(v, u), minus(middleOf(cornersOf(file, file.vertices_coords, face)), u))[2]);
      if (left !== null) expect(sideOf(left)).toBe(1);
      if (right !== null) expect(sideOf(right)).toBe(-1);
      const faces = [left, right].filter((face) => face !== null);
      expect(faces).toHaveLength(file.edges_assignment[edge] === 'B' ? 1 : 2);
    }
  });
});

describe.each(everyKind)('the frames: corners $corners, hems $hem.turn, seam $seam', (raw) => {
  const folded = foldedFrom(raw);
  const file = toFold(folded, 'test');
  const moves = folded.program.steps.filter(movesPaper);

  test('are the flat form, the closed form, and one for each step that moves paper', () => {
    const titles = file.file_frames.map(({ frame_title }) => frame_title);
    expect(moves.length).toBeLessThan(folded.program.steps.length);
    expect(titles).toEqual(['flat', 'closed', ...moves.map(({ name }) => name)]);
    for (const frame of file.file_frames) {
      expect(frame).toMatchObject({ frame_classes: ['foldedForm'], frame_parent: 0, frame_inherit: true });
      const dimensions = frame.vertices_coords[0]?.length;
      expect(frame.frame_attributes).toContain(dimensions === 3 ? '3D' : '2D');
      expect(new Set(frame.vertices_coords.map(({ length }) => length)).size).toBe(1);
    }
    expect(file.file_frames.filter(({ frame_attributes: has }) => has.includes('3D'))).toHaveLength(3);
  });

  test('keep every edge as long as it is on the open sheet', () => {
    const lengths = (coords: FoldDocument['vertices_coords']) =>
      file.edges_vertices.map(([u, v]) => {
        const [a = [], b = []] = [coords[u], coords[v]];
        return Math.hypot(...[0, 1, 2].map((axis) => (a[axis] ?? 0) - (b[axis] ?? 0)));
      });
    const open = lengths(file.vertices_coords);
    for (const { vertices_coords } of file.file_frames)
      for (const [edge, length] of lengths(vertices_coords).entries())
        expect(length).toBeCloseTo(open[edge] ?? Number.NaN, 5);
  });

  test('mark a crease that is not folded yet as flat', () => {
    for (const [index, frame] of file.file_frames.slice(2).entries()) {
      const done = new Set(moves.slice(0, index + 1).map(({ name }) => name));
      for (const [edge, letter] of frame.edges_assignment.entries()) {
        const step = file['edges_hemfold:step'][edge] ?? null;
        const folds = step !== null && done.has(step);
        expect(letter).toBe(step === null ? 'B' : folds ? file.edges_assignment[edge] : 'F');
        expect(frame.edges_foldAngle[edge]).toBe(folds ? file.edges_foldAngle[edge] : 0);
      }
    }
  });

  test('put one face above another as normals say: a valley’s look at each other (edges_assignment, faceOrders)', () => {
    for (const frame of file.file_frames) {
      const orders = new Map(frame.faceOrders.map(([f, g, s]) => [`${f} ${g}`, s]));
      let seen = 0;
      for (const [edge, faces] of file.edges_faces.entries()) {
        const [f, g] = faces.toSorted((one, other) => (one ?? -1) - (other ?? -1));
        if (Math.abs(frame.edges_foldAngle[edge] ?? 0) !== 180) continue;
        // f lies on the side to which g's normal points if and only if the crease between them is a valley
        expect(orders.get(`${f} ${g}`)).toBe(frame.edges_assignment[edge] === 'V' ? 1 : -1);
        seen++;
      }
      expect(seen).toBeGreaterThan(0);
    }
  });

  test('put one face above another as the layers lie', () => {
    const [flat] = file.file_frames;
    if (!flat) throw new Error('the file has no frames');
    for (const [f, g, s] of flat.faceOrders) {
      const up = Math.sign(normalOf(cornersOf(file, flat.vertices_coords, g))[2]);
      const [one, other] = [folded.proof.faces[f], folded.proof.faces[g]];
      expect(Math.sign((one?.height ?? Number.NaN) - (other?.height ?? Number.NaN))).toBe(s * up);
    }
    expect(frameOf(file, 'closed').faceOrders).toEqual(flat.faceOrders);
  });

  test('bend valleys so that the two sides’ normals lean toward each other, in 3D too', () => {
    for (const title of ['closed', 'spine at the front', 'spine at the back']) {
      const frame = frameOf(file, title);
      let seen = 0;
      for (const [edge, [left, right]] of file.edges_faces.entries()) {
        if (Math.abs(frame.edges_foldAngle[edge] ?? 0) !== 90 || left === null || right === null) continue;
        const [one, other] = [left, right].map((face) => cornersOf(file, frame.vertices_coords, face));
        if (!one || !other) throw new Error(`edge ${edge} has no faces`);
        const leans = dot(normalOf(one), minus(middleOf(other), middleOf(one)));
        expect(Math.sign(leans)).toBe(frame.edges_assignment[edge] === 'V' ? 1 : -1);
        seen++;
      }
      expect(seen).toBe(title === 'spine at the front' ? 3 : 6);
    }
  });

  test('end with the closed form, and hold the flat form just before the spine', () => {
    const same = ({ frame_title: _, ...rest }: FoldFrame) => rest;
    const [flat, closed] = file.file_frames;
    const last = file.file_frames.at(-1);
    const before = file.file_frames.at(-3);
    if (!flat || !closed || !last || !before) throw new Error('the file lacks frames');
    expect(same(last)).toEqual(same(closed));
    expect(same(before)).toEqual(same(flat));
  });
});

describe('by hand, for a blank of 270 × 320 mm', () => {
  const file = sheet(easySleeve);
  const at = (title: string, x: number, y: number) => {
    const vertex = file.vertices_coords.findIndex((point) => point[0] === x && point[1] === y);
    return frameOf(file, title).vertices_coords[vertex];
  };

  test('the top left corner’s tip goes to the hem score, then under, then down', () => {
    expect(at('top left corner', 0, 320)).toEqual([30, 290]);
    expect(at('left hem', 0, 320)).toEqual([30, 290]);
    expect(at('left hem', 0, 290)).toEqual([60, 290]);
    // over the fold at y = 260, the tip at 290 comes to 230
    expect(at('top flap', 0, 320)).toEqual([30, 230]);
    expect(at('flat', 0, 320)).toEqual([30, 230]);
  });

  test('closed, the cover’s outer edge stands 100 mm above the spine', () => {
    expect(at('closed', 30, 260)).toEqual([130, 260, 100]);
    expect(at('closed', 240, 110)).toEqual([140, 110, 100]);
    expect(at('closed', 0, 320)).toEqual([130, 230, 100]);
  });

  test('the pockets lie between the covers, hems turned out lie outside', () => {
    const closed = frameOf(file, 'closed');
    const face = (panel: string) => file['faces_hemfold:panel'].indexOf(panel);
    /** Which way, along x, one lies from the other. */
    const lies = (panel: string, from: string): number => {
      const [f, g] = [face(panel), face(from)];
      const direct = closed.faceOrders.find(([one, other]) => one === f && other === g);
      const turned = closed.faceOrders.find(([one, other]) => one === g && other === f);
      const normal = (of: number) => Math.sign(normalOf(cornersOf(file, closed.vertices_coords, of))[0]);
      if (direct) return direct[2] * normal(g);
      if (turned) return -turned[2] * normal(f);
      throw new Error(`${panel} and ${from} do not overlap`);
    };
    // the front stands at x = 130, the back at x = 140: inward is +x at the front and -x at the back
    expect(lies('top flap, front', 'front')).toBe(1);
    expect(lies('bottom flap, front', 'top flap, front')).toBe(1);
    expect(lies('left hem', 'front')).toBe(-1);
    expect(lies('top flap, back', 'back')).toBe(-1);
    expect(lies('right hem', 'back')).toBe(1);
    expect(lies('top flap, left hem', 'bottom flap, left hem')).toBe(1); // tucked
  });
});

test('the boundary between the axes flips y and nothing else', () => {
  const toAxes = toFoldAxes(320_000_000);
  expect(toAxes({ x: 0, y: 0 }, 2)).toEqual([0, 320]);
  expect(toAxes({ x: 1_000_001, y: 320_000_000 }, 2)).toEqual([1.000001, 0]);
  expect(toAxes({ x: -0.2, y: 320_000_000.4, z: -0.4 }, 3)).toEqual([0, 0, 0]);
  expect(toAxes({ x: 5_000_000, y: 330_000_000, z: 7_500_000 }, 3)).toEqual([5, -10, 7.5]);
});

test('the schema refuses what is not FOLD', () => {
  const file = sheet(easySleeve);
  const accepted = (change: object) => foldDocument.safeParse({ ...file, ...change }).success;
  expect(accepted({})).toBe(true);
  expect(accepted({ file_spec: 1.1 })).toBe(false);
  expect(accepted({ edges_assignment: ['X'] })).toBe(false);
  expect(accepted({ edges_foldAngle: [181] })).toBe(false);
  expect(accepted({ vertices_coords: [[1]] })).toBe(false);
  expect(accepted({ extra: 1 })).toBe(false);
});
