import { describe, expect, test } from 'vitest';
import type { FoldProgram } from '../../shared/creases/fold-program.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { boxOf, type FlatFace, flatFaces } from '../../shared/folding/flat-faces.ts';
import { foldInSteps, middleOf } from '../../shared/folding/fold-in-steps.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { foldOver } from '../support/patterns.ts';
import { easySleeve, everyKind, foldedFrom } from '../support/sleeves.ts';

/** A strip of 30 × 10 mm whose thirds are panels of their own. */
const strip = (steps: FoldProgram['steps']): FoldProgram => ({
  outline: [
    { x: 0, y: 0 },
    { x: mm(30), y: 0 },
    { x: mm(30), y: mm(10) },
    { x: 0, y: mm(10) },
  ],
  panels: ['left', 'middle', 'right'].map((name, index) => ({
    name,
    left: mm(10 * index),
    top: 0,
    right: mm(10 * (index + 1)),
    bottom: mm(10),
  })),
  steps,
});

/** Panels from the lowest layer up, a turned one with a bar. */
function layersAfter(program: FoldProgram): string {
  const pattern = unfold(program);
  const form = foldInSteps(pattern, program).at(-1);
  if (!form) return '';
  return flatFaces(pattern, form)
    .toSorted((one, other) => one.height - other.height)
    .map(({ panel, turned }) => (turned ? `${panel}|` : panel))
    .join(' ');
}

const right = foldOver([20, 0, 20, 10], [30, 5], 'right over');
const left = foldOver([10, 0, 10, 10], [0, 5], 'left over');
const under = 'away' as const;

describe('a strip in thirds', () => {
  test.each([
    ['right, then left over it', [right, left], 'middle right| left|'],
    ['left, then right over it', [left, right], 'middle left| right|'],
    ['right over, left under', [right, { ...left, direction: under }], 'left| middle right|'],
    [
      'left under, then right under it',
      [
        { ...left, direction: under },
        { ...right, direction: under },
      ],
      'right| left| middle',
    ],
    [
      // the first fold lays the right third on the middle; the next turns both of them over onto the left
      'rolled up',
      [right, foldOver([10, 0, 10, 10], [15, 5])],
      'left right middle|',
    ],
    [
      'rolled up and under',
      [right, { ...foldOver([10, 0, 10, 10], [15, 5]), direction: under }],
      'right middle| left',
    ],
    [
      'slipped under again',
      [right, left, { kind: 'tuck', name: 'tuck', panel: 'left', to: 'below', of: 'right' }],
      'middle left| right|',
    ],
    [
      'slipped over again',
      [left, right, { kind: 'tuck', name: 'tuck', panel: 'left', to: 'above', of: 'right' }],
      'middle right| left|',
    ],
  ] as const)('%s', (_, steps, layers) => {
    expect(layersAfter(strip(steps))).toBe(layers);
  });

  test('bent at a right angle, nothing moves', () => {
    // left and middle lie side by side, in no order that means anything
    const layers = layersAfter(strip([right, { ...left, angle: 90 }]));
    expect(layers).toMatch(/^(left middle|middle left) right\|$/);
  });

  test('a form is kept for the open sheet and after each step', () => {
    const program = strip([right, left, { ...left, angle: 90 }]);
    const pattern = unfold(strip([right, left]));
    const forms = foldInSteps(pattern, program);
    expect(forms).toHaveLength(4);
    const boxes = forms.map((form) => {
      const { left: from, right: to } = boxOf(flatFaces(pattern, form).flatMap(({ corners }) => corners));
      return [from / 1e6, to / 1e6];
    });
    expect(boxes).toEqual([
      [0, 30],
      [0, 20],
      [10, 20],
      [10, 20],
    ]);
    expect(forms[3]).toBe(forms[2]);
  });

  test('glue and contents leave every layer where it is', () => {
    const glue = {
      kind: 'glue',
      name: 'glue',
      holds: 'thirds',
      strips: [],
      width: 1,
      inset: 0,
      lines: 1,
    } as const;
    const fill = { kind: 'fill', name: 'contents', pockets: ['pouch'] } as const;
    const program = strip([glue, right, glue, left, fill]);
    expect(layersAfter(program)).toBe('middle right| left|');
    const pattern = unfold(program);
    expect(pattern.edges).toHaveLength(unfold(strip([right, left])).edges.length);
    const forms = foldInSteps(pattern, program);
    expect(forms).toHaveLength(6);
    expect([forms[1] === forms[0], forms[3] === forms[2], forms[5] === forms[4]]).toEqual([true, true, true]);
  });

  test.each([
    ['above', 'left', 'sleeve', 'sleeve'],
    ['below', 'left', 'sleeve', 'sleeve'],
    ['above', 'sleeve', 'left', 'sleeve'],
  ] as const)('a tuck %s of %s to %s says which panel is missing', (to, panel, of, missing) => {
    const program = strip([right, left, { kind: 'tuck', name: 'tuck', panel, to, of }]);
    expect(() => layersAfter(program)).toThrow(`no face lies in the panel ${missing}`);
  });
});

test('the middle of a face is the mean of its corners', () => {
  const vertices = [
    { x: 0, y: 0 },
    { x: 9, y: 0 },
    { x: 0, y: 6 },
  ];
  expect(middleOf([0, 1, 2], vertices)).toEqual({ x: 3, y: 2 });
});

describe('a sleeve of 270 × 320 mm', () => {
  const placeOf = (faces: readonly FlatFace[], wanted: string) => {
    const box = boxOf(faces.filter(({ panel }) => panel === wanted).flatMap(({ corners }) => corners));
    return [box.left, box.right, box.top, box.bottom].map((nm) => Math.round(nm) / 1e6);
  };

  test('shrinks step by step to 210 × 150', () => {
    const { pattern, proof } = foldedFrom(easySleeve);
    const sizes = proof.forms.map((form) => {
      const box = boxOf(flatFaces(pattern, form).flatMap(({ corners }) => corners));
      return [(box.right - box.left) / 1e6, (box.bottom - box.top) / 1e6].map(Math.round);
    });
    expect(pattern.steps).toEqual([
      'top left corner',
      'top right corner',
      'bottom right corner',
      'bottom left corner',
      'glue at the corners',
      'left hem',
      'right hem',
      'glue at the hems',
      'top flap',
      'bottom flap',
      'tuck at the left hem',
      'tuck at the right hem',
      'glue at the seam',
      'spine at the front',
      'spine at the back',
    ]);
    const corners = [270, 320]; // a corner gone leaves the other three to reach as far
    expect(sizes).toEqual([
      ...[corners, corners, corners, corners, corners, corners],
      ...[
        [240, 320],
        [210, 320],
        [210, 320],
        [210, 260],
      ],
      ...[
        [210, 150],
        [210, 150],
        [210, 150],
        [210, 150],
        [210, 150],
        [210, 150],
      ],
    ]);
  });

  test('puts its parts where a ruler finds them', () => {
    const { proof } = foldedFrom(easySleeve);
    expect(placeOf(proof.faces, 'front')).toEqual([30, 130, 60, 210]);
    expect(placeOf(proof.faces, 'left hem')).toEqual([30, 60, 60, 210]);
    expect(placeOf(proof.faces, 'right hem')).toEqual([210, 240, 60, 210]);
    expect(placeOf(proof.faces, 'top flap, front')).toEqual([30, 130, 60, 120]);
    expect(placeOf(proof.faces, 'bottom flap, back')).toEqual([140, 240, 100, 210]);
    expect(placeOf(proof.faces, 'bottom flap, right hem')).toEqual([210, 240, 100, 210]);
  });

  /** Panels over a point at the left end, (45, 110) mm, from the lowest layer up, without corners. */
  test.each([
    // hems out lie behind their panel, so on a flap that is folded over they come to lie in front of it
    ['out', 'flat', ['left hem', 'front', 'T', 'T hem', 'B', 'B hem']],
    // the top flap's hem closes over the bottom flap
    ['out', 'tucked', ['left hem', 'front', 'T', 'B', 'B hem', 'T hem']],
    // hems in lie on their panel, so on a flap that is folded over they lie behind it
    ['in', 'flat', ['front', 'left hem', 'T hem', 'T', 'B hem', 'B']],
    ['in', 'tucked', ['front', 'left hem', 'B hem', 'T hem', 'T', 'B']],
  ] as const)('hems %s, seam %s', (turn, seam, layers) => {
    const { proof } = foldedFrom({ ...easySleeve, hem: { turn }, seam, corners: 'mitred' });
    const short = (panel: string) =>
      panel
        .replace('top flap, front', 'T')
        .replace('top flap, left', 'T')
        .replace('bottom flap, front', 'B')
        .replace('bottom flap, left', 'B');
    const over = proof.faces
      .filter(
        ({ left: from, right: to, top, bottom }) =>
          from < mm(40) && to > mm(40) && top < mm(112) && bottom > mm(112),
      )
      .toSorted((one, other) => one.height - other.height);
    expect(over.map(({ panel }) => short(panel))).toEqual(layers);
  });

  test('is the same outline for every kind', () => {
    for (const raw of everyKind) {
      const box = boxOf(foldedFrom(raw).proof.faces.flatMap(({ corners }) => corners));
      expect(box).toEqual({ left: mm(30), right: mm(240), top: mm(60), bottom: mm(210) });
    }
  });
});
