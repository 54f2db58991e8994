import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../shared/drawing/figure.ts';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { methods } from '../../src/page/ask/methods.ts';
import { writeDrawing } from '../../src/page/ask/write-drawing.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';

describe('the drawing that the page writes', () => {
  test('is, byte for byte, the one that the service writes', () => {
    let drawn = 0;
    fc.assert(
      fc.property(specs, ({ spec, spelling }) => {
        const asked = spell(spec, spelling);
        if (methods.fold(asked).state !== 'folded') return;
        drawn++;
        expect(methods.drawing(asked)).toBe(svgOfFolder(folderSpec.parse(asked)));
      }),
      { numRuns: 150 },
    );
    expect(drawn).toBeGreaterThan(100);
  });

  test('also where text and attributes hold what XML keeps for itself', () => {
    const texts = fc.string({ unit: fc.constantFrom('a', '"', "'", '&', '<', '>', ';', 'é', '\u00a0', ' ') });
    fc.assert(
      fc.property(texts, texts, (title, id) => {
        const path = { id, data: 'M 0 0 L 1 1' };
        const attributes = { fill: 'none', stroke: '#AbCdEf', 'stroke-width': '0.25' };
        const group = { id, title, attributes, paths: [path], groups: [] };
        const figure: Figure = {
          width: '1mm',
          height: '1mm',
          viewBox: '0 0 1 1',
          title,
          description: title,
          groups: [{ ...group, groups: [group] }],
        };
        expect(writeDrawing(figure)).toBe(writeSvg(figure));
      }),
      { numRuns: 300 },
    );
  });

  test('the comparison fails on a single letter', () => {
    const figure = {
      width: '1mm',
      height: '1mm',
      viewBox: '0 0 1 1',
      title: '',
      description: '',
      groups: [],
    };
    expect(writeDrawing(figure)).not.toBe(writeSvg({ ...figure, title: 'a' }));
  });
});
