import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawingRules } from '../support/drawing-rules.ts';
import { draw } from '../support/drawn.ts';
import { bundleOf, complaintsOfDtd, dtdIsHere, toolsRequired } from '../support/dtd.ts';
import { type Sampled, sampleDrawings } from '../support/sampled.ts';
import { sleeveSpec } from '../support/sleeve-spec.ts';

/** Every property is asked of the same drawings, made once. */
const SPECS = 2050;
const SEED = 20260;

let sampled: Sampled;
let folder: string;

beforeAll(() => {
  sampled = sampleDrawings(SPECS, SEED);
  folder = mkdtempSync(join(tmpdir(), 'hemfold-drawings-'));
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('drawings of generated specs', () => {
  it('are made for at least 2,000 specs that fold', () => {
    expect(sampled.failures.slice(0, 3)).toEqual([]);
    expect(sampled.samples.length).toBeGreaterThanOrEqual(2000);
    expect(sampled.samples.length + sampled.refused).toBe(SPECS);
  });

  it('cover every option that changes a drawing', () => {
    const { samples } = sampled;
    const seen = (has: (sample: (typeof samples)[number]) => unknown) => samples.filter(has).length;
    const chosen = ({ drawn }: (typeof samples)[number]) => drawn.plan.spec.convention;
    const counts = {
      turned: seen(({ drawn }) => drawn.plan.arrangement.drawingTurned),
      mirrored: seen((sample) => chosen(sample)?.sheetLies === 'outside-up'),
      turnedAndMirrored: seen(
        (sample) => sample.drawn.plan.arrangement.drawingTurned && chosen(sample)?.sheetLies === 'outside-up',
      ),
      mitred: seen(({ drawn }) => sleeveSpec(drawn.plan).corners === 'mitred'),
      hemsIn: seen(({ drawn }) => sleeveSpec(drawn.plan).hem?.turn === 'in'),
      wholeSheet: seen(({ drawn }) => drawn.plan.wholeSheet),
      offcutsAlone: seen(({ drawn }) => drawn.svg.includes('id="corner-1"')),
      nothingToCut: seen(({ drawn }) =>
        drawn.read.groups.some((g) => g.id === 'cut' && g.paths.length === 0),
      ),
      perforated: seen((sample) => chosen(sample)?.score?.as === 'perforation'),
      inset: seen((sample) => (chosen(sample)?.score?.inset ?? 0) > 0),
      filledCut: seen((sample) => chosen(sample)?.layers?.cut?.paint === 'fill'),
      layerOff: seen((sample) => Object.values(chosen(sample)?.layers ?? {}).some((layer) => layer?.off)),
      guided: seen(({ drawn }) => drawn.svg.includes('id="guide-glue-')),
      guidedInPart: seen((sample) => {
        const layers = chosen(sample)?.layers;
        return layers?.guide === undefined && layers?.guideKeepOut;
      }),
      points72: seen((sample) => chosen(sample)?.userUnit === '1/72 in'),
      pixels: seen((sample) => chosen(sample)?.userUnit === '1/96 in' && chosen(sample)?.rootUnit === 'px'),
      cutter: seen(({ drawn }) => drawn.plan.spec.cutter),
      published: seen(({ drawn }) => drawn.plan.spec.stock === undefined),
      several: seen(({ drawn }) => Array.isArray(drawn.plan.spec.stock)),
      contentsOnly: seen(({ drawn }) => drawn.plan.spec.dimensions === undefined),
      dimensionsOnly: seen(({ drawn }) => drawn.plan.spec.contents === undefined),
    };
    for (const [option, count] of Object.entries(counts)) expect(count, option).toBeGreaterThan(30);
  });

  it.each(drawingRules)('$name', ({ broken }) => {
    const faults = sampled.samples.flatMap(({ drawn }) => {
      const fault = broken(drawn);
      return fault === undefined ? [] : [`${fault} for ${JSON.stringify(drawn.raw)}`];
    });
    expect({ faults: faults.length, first: faults.slice(0, 2) }).toEqual({ faults: 0, first: [] });
  });

  it('are the same bytes for the same spec, in whatever order its members come', () => {
    const backwards = (value: unknown): unknown =>
      Array.isArray(value) || typeof value !== 'object' || value === null
        ? value
        : Object.fromEntries(
            Object.entries(value)
              .toReversed()
              .map(([key, item]) => [key, backwards(item)]),
          );
    const some = sampled.samples.filter((_, index) => index % 6 === 0);
    const changed = some.filter(({ drawn }) => draw(backwards(drawn.raw))?.svg !== drawn.svg);
    expect(changed.map(({ drawn }) => drawn.raw)).toEqual([]);
    expect(some.length).toBeGreaterThan(300);
  });
});

const withoutTools = !toolsRequired && !dtdIsHere();

describe.skipIf(withoutTools)('the W3C SVG 1.1 DTD, with xmllint and w3c-sgml-lib installed', () => {
  const write = (name: string, files: readonly string[]): string => {
    const place = join(folder, name);
    mkdirSync(place);
    for (const [index, svg] of files.entries()) writeFileSync(join(place, `${index}.svg`), svg);
    return place;
  };

  const all = (): readonly string[] => sampled.samples.map(({ drawn }) => drawn.svg);
  const numbers = Array.from({ length: 10 }, (_, number) => number);

  it('holds for every drawing, bundled two hundred to a document', async () => {
    const bundles = numbers.map((number) => bundleOf(all().filter((_, index) => index % 10 === number)));
    expect(bundles.join('').split('id="cut.').length).toBeGreaterThan(1500);
    expect(await complaintsOfDtd(write('bundles', bundles))).toBe('');
  }, 120_000);

  it('holds for a hundred drawings as the files that they are', async () => {
    expect(await complaintsOfDtd(write('files', all().slice(0, 100)))).toBe('');
  }, 120_000);

  it.each([
    [
      'an attribute that SVG does not have',
      (svg: string) => svg.replace('<path ', '<path data-layer="cut" '),
    ],
    ['an element that SVG does not have', (svg: string) => svg.replace('</svg>', '<layer/></svg>')],
    ['a path without data', (svg: string) => svg.replace(/ d="[^"]*"/u, '')],
    ['an id that comes twice', (svg: string) => svg.replace('id="score-valley"', 'id="score-mountain"')],
  ])('refuses %s in one drawing among others', async (name, spoil) => {
    const drawings = [
      ...all()
        .filter((svg) => svg.includes('score-valley') && svg.includes('score-mountain'))
        .slice(0, 4),
    ];
    const spoilt = drawings.map((svg, index) => (index === 1 ? spoil(svg) : svg));
    expect(spoilt).not.toEqual(drawings);
    expect(await complaintsOfDtd(write(`${name}, bundled`, [bundleOf(spoilt)]))).toMatch(/valid|Syntax/u);
    expect(await complaintsOfDtd(write(`${name}, in files`, spoilt))).toMatch(/valid|Syntax/u);
  });
});
