import { describe, expect, test } from 'vitest';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { solidOf } from '../../src/page/ask/solid-of.ts';
import { folder } from '../../src/page/solid/fold.ts';

const foldedAs = (spec: object) => {
  const solution = solveFolder(folderSpec.parse(spec));
  if (!solution.ok) throw new Error('the example cannot be folded');
  return proofOf(solution.plan);
};

const contents = { item: { size: 'iso-a6' }, perPocket: 2 };
const examples: readonly (readonly [string, object])[] = [
  ['twin sleeve', { style: 'twin-sleeve', units: 'mm', contents }],
  [
    'twin sleeve, hems in',
    { style: 'twin-sleeve', units: 'mm', contents, hem: { turn: 'in' }, corners: 'mitred' },
  ],
  ['pocket folder', { style: 'pocket-folder', units: 'mm', contents }],
  ['tuck box', { style: 'tuck-box', units: 'mm', contents: { ...contents, perPocket: 12 } }],
  ['envelope', { style: 'envelope', units: 'mm', contents: { item: { size: 'iso-a6' } } }],
];

describe.each(examples)('the fold in space of a %s', (_, spec) => {
  const folded = foldedAs(spec);
  const solid = solidOf(folded);

  test('lies after each step where the FOLD file has it', () => {
    const { height } = solid;
    const paper = folder({ ...solid, caliper: 0 });
    const frames = toFold(folded, 'test').file_frames.slice(2);
    const moving = folded.program.steps.flatMap((step, index) =>
      step.kind === 'glue' || step.kind === 'fill' ? [] : [index + 1],
    );
    expect(frames).toHaveLength(moving.length);
    for (const [index, at] of moving.entries()) {
      const coordinates = frames[index]?.vertices_coords ?? [];
      const faces = paper(at);
      for (const [face, corners] of solid.faces.entries()) {
        for (const [place, vertex] of corners.entries()) {
          const { x = Number.NaN, y = Number.NaN, z = Number.NaN } = faces[face]?.[place] ?? {};
          const [wantedX = Number.NaN, wantedY = Number.NaN, wantedZ = 0] = coordinates[vertex] ?? [];
          expect(Math.hypot(x - wantedX, height - y - wantedY, z - wantedZ), `step ${at}`).toBeLessThan(1e-5);
        }
      }
    }
  });

  test('keeps every face stiff, also halfway through a step', () => {
    const paper = folder(solid);
    for (let at = 0; at <= solid.steps; at += 0.37) {
      for (const [face, corners] of paper(at).entries()) {
        for (const [place, vertex] of (solid.faces[face] ?? []).entries()) {
          const before = solid.faces[face]?.at(place - 1) ?? 0;
          const [p, q] = [corners[place], corners.at(place - 1)];
          const [[x = 0, y = 0] = [], [u = 0, v = 0] = []] = [solid.vertices[vertex], solid.vertices[before]];
          if (!p || !q) throw new Error('a face has lost a corner');
          expect(Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z)).toBeCloseTo(Math.hypot(x - u, y - v), 6);
        }
      }
    }
  });

  test('begins flat, with every face in one plane', () => {
    for (const corners of folder(solid)(0)) for (const { z } of corners) expect(z).toBe(0);
  });

  test('puts no two layers that lie over each other at one height', () => {
    const { forms } = folded.proof;
    for (const [moment, form] of forms.entries()) {
      const lifts = solid.lifts[moment] ?? [];
      const most = Math.max(...lifts.map(Math.abs));
      // faces are stacked by their own layers, never by the count of all faces
      expect(most).toBeLessThan(form.order.length);
    }
  });
});
