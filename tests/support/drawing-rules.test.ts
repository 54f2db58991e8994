import { describe, expect, it } from 'vitest';
import { drawingRules } from './drawing-rules.ts';
import { type Drawn, mustDraw } from './drawn.ts';
import { readSvg } from './read-svg.ts';

const base = {
  style: 'twin-sleeve',
  units: 'mm',
  stock: { width: 305, height: 390 },
  dimensions: { panel: { width: 90, height: 140 }, spine: 12, hem: 40, topFlap: 60, overlap: 15 },
};

const folded = mustDraw(base);
const mitred = mustDraw({ ...base, corners: 'mitred' });
const perforated = mustDraw({ ...base, convention: { score: { as: 'perforation' } } });

const guided = mustDraw({ ...base, convention: { layers: { guide: {} } } });

const brokenBy = (drawn: Drawn, change: (svg: string) => string): readonly string[] => {
  const svg = change(drawn.svg);
  expect(svg, 'the change must change something').not.toBe(drawn.svg);
  const changed = { ...drawn, svg, read: readSvg(svg) };
  return drawingRules.filter((rule) => rule.broken(changed) !== undefined).map((rule) => rule.name);
};

const instead = (from: string | RegExp, to: string) => (svg: string) => svg.replace(from, to);
const added = (id: string, data: string) =>
  instead(/(<title>Score, valley<\/title>)/u, `$1<path id="${id}" d="${data}"/>`);

describe('each rule of the drawing', () => {
  it.each([folded, mitred, perforated, guided])('holds for a right drawing', (drawn) => {
    expect(drawingRules.flatMap((rule) => rule.broken(drawn) ?? [])).toEqual([]);
  });

  it.each<[string, Drawn, (svg: string) => string, RegExp]>([
    [
      'inches for millimetres',
      folded,
      (svg) => svg.replaceAll(/(\d)mm"/gu, '$1in"'),
      /^the root is as large/u,
    ],
    ['a score 0.01 mm off', folded, instead('L 40 295"', 'L 40.01 295"'), /^every score is where/u],
    [
      'a score left out',
      folded,
      instead(/<path [^>]*id="left-hem"[^>]*>(<\/path>)?/u, ''),
      /^every score is where/u,
    ],
    [
      'a corner of the outline moved',
      folded,
      instead('M 0 0 L 272 0', 'M 0 1 L 272 0'),
      /^the outline is cut/u,
    ],
    ['a score drawn twice', folded, added('again', 'M 40 60 L 232 60'), /^no line lies on another/u],
    [
      'a score over a part of another',
      folded,
      added('again', 'M 100 60 L 110 60'),
      /^no line lies on another/u,
    ],
    ['a score on the cut', folded, added('again', 'M 0 100 L 0 120'), /^no line lies on another/u],
    ['a line of no length', folded, added('dot', 'M 50 50 L 50 50'), /^no piece has zero length/u],
    ['a score into a mitred corner', mitred, added('stray', 'M 10 10 L 30 10'), /^no score leaves/u],
    ['a line outside the view', folded, added('stray', 'M 200 100 L 300 100'), /^nothing is drawn outside/u],
    ['a closed score', folded, added('shut', 'M 50 80 L 60 80 L 60 90 Z'), /^scores are open/u],
    ['an open cut', folded, instead('L 0 295 Z', 'L 0 295'), /^scores are open/u],
    ['a filled score', folded, instead('fill="none"', 'fill="#000000"'), /^scores are open/u],
    ['a score too long', folded, instead('L 40 295"', 'L 40 294.9"'), /^all scores together/u],
    [
      'valley for mountain',
      folded,
      (svg) =>
        svg
          .replace('score-valley', 'x')
          .replace('score-mountain', 'score-valley')
          .replace('"x"', '"score-mountain"'),
      /^valleys and mountains/u,
    ],
    ['a cut left out', perforated, instead(/ M \S+ 60 L \S+ 60(?= M)/u, ''), /^a perforated score/u],
    ['a cut over a crossing', perforated, added('stray', 'M 129 60 L 131 60'), /^a perforated score/u],
    ['another colour', folded, instead(/#009e73/iu, '#009e74'), /^every layer is there/u],
    ['another line type', folded, instead('stroke-dasharray="3 0.75"', ''), /^every layer is there/u],
    ['a layer left out', folded, instead(/<g id="knockout".*?<\/g>/su, ''), /^every layer is there/u],
    [
      'a guide that nobody asked for',
      folded,
      instead('<g id="cut"', '<g id="guide"><title>Guide</title></g><g id="cut"'),
      /^the guide is there/u,
    ],
    [
      'a guide that is filled',
      guided,
      instead(/(<g id="guide-glue-outside" fill=)"none"/u, '$1"#0072b2"'),
      /^the guide is there/u,
    ],
    [
      'a guide in the cut’s line',
      guided,
      instead(/(<g id="guide-keep-out-outside"[^>]*) stroke-dasharray="[^"]*"/u, '$1'),
      /^the guide is there/u,
    ],
    ['layers in another order', folded, (svg) => swapped(svg), /^layers come in the order/u],
    [
      'no words',
      folded,
      instead('<title>Cut</title>', '<title></title>'),
      /^the drawing and every layer say/u,
    ],
  ])('is broken by %s', (_, drawn, change, rule) => {
    expect(brokenBy(drawn, change)).toContainEqual(expect.stringMatching(rule));
  });
});

const swapped = (svg: string): string => {
  const [cut = ''] = /<g id="cut".*?<\/g>/su.exec(svg) ?? [];
  return svg.replace(cut, '').replace('<g id="score">', `${cut}<g id="score">`);
};
