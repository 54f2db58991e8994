import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nest, runToEnd } from '../../shared/nesting/nest.ts';
import { setSpec } from '../../shared/sets/set-spec.ts';
import { showSetPlan } from '../../shared/sets/show-set-plan.ts';
import { setExamples } from '../../src/contract/set-examples.ts';
import { planSet } from '../../src/sets/plan-set.ts';
import { sheetsOf } from '../../src/sets/sheets-of-set.ts';
import { build } from '../src/build.ts';
import { overlapsAmong } from '../support/overlaps.ts';
import { type At, everyGroup, type Piece, pathsIn, piecesOf, readSvg } from '../support/read-svg.ts';
import { unzip } from './unzip.ts';

/** Nests at once; the search is kept short. */
const atOnce = {
  run: (input: Parameters<typeof nest>[0]) => Promise.resolve(runToEnd(nest({ ...input, evaluations: 200 }))),
};

const planned = async (body: unknown) => planSet(setSpec.parse(body), atOnce);
const filesOf = (archive: Buffer) => new Map(unzip(archive).map(({ name, text }) => [name, text]));

const near = (one: number, other: number) => Math.abs(one - other) < 0.002;
const liesOn = ([p, q]: Piece, at: At): boolean =>
  near(
    Math.hypot(at.x - p.x, at.y - p.y) + Math.hypot(at.x - q.x, at.y - q.y),
    Math.hypot(p.x - q.x, p.y - q.y),
  );

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Points all along the sides of a rectangle. */
const around = ({ x, y, width, height }: Rectangle): readonly At[] =>
  [0.013, 0.29, 0.51, 0.77, 0.987].flatMap((share) => [
    { x: x + share * width, y },
    { x: x + share * width, y: y + height },
    { x, y: y + share * height },
    { x: x + width, y: y + share * height },
  ]);

/** Everything that is wrong with the sheets of a set of rectangles. */
async function faultsOf(body: {
  readonly gap?: number;
  readonly cutter?: { readonly width: number } | undefined;
}): Promise<string[]> {
  const result = await planned(body);
  const plan = showSetPlan(result);
  const files = filesOf(sheetsOf(result));
  const faults: string[] = [];
  const counts = new Map<string, number>();
  for (const { layouts } of plan.papers)
    for (const { file, times, placed, sheet } of layouts) {
      const boxes = placed.map(({ x, y, width, height }) => ({
        x: x.mm,
        y: y.mm,
        width: width.mm,
        height: height.mm,
      }));
      for (const { piece } of placed) counts.set(piece, (counts.get(piece) ?? 0) + times);
      for (const [index, one] of boxes.entries())
        for (const other of boxes.slice(0, index)) {
          const apart = Math.max(
            one.x - other.x - other.width,
            other.x - one.x - one.width,
            one.y - other.y - other.height,
            other.y - one.y - one.height,
          );
          if (apart < (body.gap ?? 0) - 1e-9) faults.push(`${file}: two pieces lie ${apart} mm apart`);
        }
      const read = readSvg(files.get(file) ?? '');
      if (body.cutter && read.width > body.cutter.width + 0.001)
        faults.push(`${file}: wider than the machine`);
      if (!near(read.width, sheet.width.mm) || !near(read.height, sheet.height.mm))
        faults.push(`${file}: wrong size`);
      const drawn = piecesOf(everyGroup(read.groups).flatMap(({ paths }) => paths));
      faults.push(...overlapsAmong(drawn).map((fault) => `${file}: ${fault}`));
      const isEdge = ({ x, y }: At) =>
        near(x, 0) || near(y, 0) || near(x, read.width) || near(y, read.height);
      for (const box of boxes)
        if (around(box).some((at) => !isEdge(at) && !drawn.some((piece) => liesOn(piece, at))))
          faults.push(`${file}: a side of a piece is not cut`);
      for (const at of drawn.flat())
        if (at.x < -0.001 || at.y < -0.001 || at.x > read.width + 0.001 || at.y > read.height + 0.001)
          faults.push(`${file}: drawn outside of the sheet`);
    }
  for (const { name, quantity } of plan.pieces)
    if (counts.get(name) !== quantity) faults.push(`${name}: ${counts.get(name)} of ${quantity}`);
  return faults;
}

/** Points of plain straight path data. */
const pointsOf = (data: string): readonly At[] =>
  [...data.matchAll(/([\d.]+) ([\d.]+)/gu)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

const side = fc.integer({ min: 20, max: 140 });
const anySet = fc.record({
  units: fc.constant('mm'),
  kits: fc.integer({ min: 1, max: 6 }),
  spoilage: fc.constantFrom(0, 0.05, 0.3),
  gap: fc.constantFrom(0, 3),
  seed: fc.integer({ min: 0, max: 9 }),
  papers: fc.constant([{ size: 'iso-a4' }, { width: 150, height: 150, oneWay: true }]),
  pieces: fc
    .array(
      fc.record({
        perKit: fc.integer({ min: 1, max: 3 }),
        paper: fc.constantFrom(0, 1),
        cut: fc.record({ width: side, height: side }),
      }),
      {
        minLength: 1,
        maxLength: 5,
      },
    )
    .map((list) => list.map((piece, index) => ({ name: `piece ${index}`, ...piece }))),
  // a machine may take the sheets only lying across, and then all is drawn turned
  cutter: fc.constantFrom(undefined, { width: 320, height: 200 }, { width: 215, height: 300 }),
  convention: fc.constantFrom({}, { sheetLies: 'outside-up' }),
});

describe('the sheets of a set', () => {
  test('hold every piece as often as it is wanted, apart, with every side cut once', async () => {
    await fc.assert(
      fc.asyncProperty(anySet, async (body) => {
        expect(await faultsOf(body)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test('the check sees a cut that is missing and one that is there twice', async () => {
    const body = {
      units: 'mm',
      kits: 1,
      spoilage: 0,
      papers: [{ width: 100, height: 100 }],
      pieces: [{ name: 'mat', perKit: 4, cut: { width: 45, height: 45 } }],
    };
    const svg = filesOf(sheetsOf(await planned(body))).get('sheet-01.svg') ?? '';
    const [path] = everyGroup(readSvg(svg).groups).flatMap((group) => pathsIn(group));
    const drawn = path ? piecesOf([path]) : [];
    expect(drawn.length).toBeGreaterThan(1);
    expect(overlapsAmong([...drawn, ...drawn.slice(0, 1)])).not.toEqual([]);
    expect(
      drawn
        .slice(1)
        .some(
          (piece) =>
            drawn[0] &&
            liesOn(piece, { x: (drawn[0][0].x + drawn[0][1].x) / 2, y: (drawn[0][0].y + drawn[0][1].y) / 2 }),
        ),
    ).toBe(false);
  });

  test('two neighbours share one line of a known place', async () => {
    const body = {
      units: 'mm',
      kits: 2,
      spoilage: 0,
      papers: [{ width: 100, height: 50 }],
      pieces: [{ name: 'mat', cut: { width: 50, height: 50 } }],
    };
    const svg = filesOf(sheetsOf(await planned(body))).get('sheet-01.svg') ?? '';
    // the sheet's own edges serve, so that one cut is all there is
    expect([...svg.matchAll(/ d="([^"]*)"/gu)].map(([, data]) => data)).toEqual(['M 50 0 L 50 50']);
  });

  test('keep scores and knockouts with their piece when it is turned', async () => {
    const make = {
      style: 'card-base',
      units: 'mm',
      dimensions: { panel: { width: 80, height: 60 } },
    };
    // the blank of 160 x 60 mm lies only turned on a sheet of 70 x 170 mm
    const body = {
      units: 'mm',
      kits: 1,
      spoilage: 0,
      papers: [{ width: 70, height: 170 }],
      pieces: [{ name: 'card', make }],
    };
    const read = readSvg(filesOf(sheetsOf(await planned(body))).get('sheet-01.svg') ?? '');
    const score = everyGroup(read.groups).find(({ id }) => id === 'score-valley');
    const [line] = piecesOf(score?.paths ?? []);
    expect(line?.map(({ y }) => y)).toEqual([80, 80]);
    expect(line?.map(({ x }) => x).toSorted((one, other) => one - other)).toEqual([0, 60]);
  });

  test('use the sheet’s own edges where room for the kerf would lie beyond them', async () => {
    // two mats are as high as the sheet: one cut between them, 0.1 mm from either, and one beside the second
    const body = {
      units: 'mm',
      kits: 2,
      spoilage: 0,
      cutter: { width: 300, height: 300, kerf: 0.2 },
      papers: [{ width: 110, height: 50 }],
      pieces: [{ name: 'mat', cut: { width: 50, height: 50 } }],
    };
    const result = await planned(body);
    expect(showSetPlan(result).papers[0]?.layouts[0]?.placed.map(({ x, width }) => [x.mm, width.mm])).toEqual(
      [
        [0, 50.1],
        [50.1, 50.2],
      ],
    );
    const svg = filesOf(sheetsOf(result)).get('sheet-01.svg') ?? '';
    const lines = [...svg.matchAll(/ d="([^"]*)"/gu)].map(([, data]) => data);
    expect(lines.toSorted()).toEqual(['M 100.3 0 L 100.3 50', 'M 50.1 0 L 50.1 50']);
  });

  test('give every piece its size where room for the kerf lies beyond the sheet', async () => {
    const body = {
      units: 'mm',
      kits: 1,
      spoilage: 0,
      cutter: { width: 300, height: 300, kerf: 1 },
      papers: [{ width: 300, height: 300 }],
      pieces: [
        { name: 'mat', cut: { width: 300, height: 150 } },
        { name: 'label', perKit: 2, cut: { width: 149.4, height: 100 } },
      ],
    };
    const svg = filesOf(sheetsOf(await planned(body))).get('sheet-01.svg') ?? '';
    const lines = [...svg.matchAll(/ d="([^"]*)"/gu)].flatMap(([, data]) => [...pointsOf(data ?? '')]);
    // the tool takes 0.5 mm on either side of a line, nothing at the sheet’s edge: 149.4 mm are left of either label
    const across = lines.filter(({ y }) => y > 200).map(({ x }) => x);
    expect([...new Set(across)].toSorted((one, other) => one - other)).toEqual([0, 149.9, 150.1, 300]);
  });

  test('tell of a piece that both edges of its sheet leave too large', async () => {
    const body = (width: number) => ({
      units: 'mm',
      kits: 1,
      spoilage: 0,
      cutter: { width: 300, height: 300, kerf: 1 },
      papers: [{ width: 300, height: 300 }],
      pieces: [{ name: 'mat', cut: { width, height: 150 } }],
    });
    const told = async (width: number) =>
      showSetPlan(await planned(body(width))).cautions.filter((each) => each.startsWith('mat '));
    expect(await told(299.8)).toEqual([expect.stringContaining('0.2 mm larger')]);
    expect(await told(300)).toEqual([]);
    expect(await told(298)).toEqual([]);
  });

  test('take a folder from a whole sheet although the tool takes a kerf away', async () => {
    const make = {
      style: 'twin-sleeve',
      dimensions: {
        panel: { width: '4 in', height: '5 3/4 in' },
        spine: '1/2 in',
        overlap: '1/2 in',
        topFlap: '2 1/2 in',
        hem: '1 3/4 in',
      },
    };
    const body = {
      kits: 3,
      spoilage: 0,
      cutter: { width: '12 in', height: '24 in', kerf: '0.2 mm' },
      papers: [{ size: 'craft-12x12' }],
      pieces: [{ name: 'folder', make }],
    };
    const files = filesOf(sheetsOf(await planned(body)));
    const { groups, width, height } = readSvg(files.get('sheet-01.svg') ?? '');
    expect(pathsIn(groups.find(({ id }) => id === 'cut') ?? expect.fail('no cut'))).toEqual([]);
    const scores = everyGroup(groups).flatMap(({ paths }) => piecesOf(paths).flat());
    expect(scores.length).toBeGreaterThan(0);
    for (const { x, y } of scores) expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(-0.001);
  });

  test('hold the inlay of a knockout, cut from its own paper, with room for the kerf', async () => {
    const shape = {
      kind: 'figure',
      on: { place: 'front' },
      figure: { shape: 'circle', diameter: 40 },
      inlay: { margin: 6 },
    };
    const make = {
      style: 'card-base',
      units: 'mm',
      dimensions: { panel: { width: 90, height: 120 } },
      knockouts: [shape],
    };
    const body = {
      units: 'mm',
      kits: 1,
      spoilage: 0,
      cutter: { width: 300, height: 300, kerf: 0.2 },
      papers: [{ size: 'iso-a4' }, { width: 60, height: 60 }],
      pieces: [
        { name: 'card', make },
        { name: 'window', paper: 1, inlay: { of: 'card', name: 'inlay-1' } },
      ],
    };
    const files = filesOf(sheetsOf(await planned(body)));
    const cutIn = (file: string, id: string) =>
      pathsIn(
        readSvg(files.get(file) ?? '').groups.find((group) => group.id === id) ?? expect.fail(`no ${id}`),
      );
    const [opening] = cutIn('sheet-01.svg', 'knockout');
    const [inlay] = cutIn('sheet-02.svg', 'cut');
    const across = (path: typeof opening) => {
      const xs = piecesOf(path ? [path] : []).flatMap((piece) => [
        piece[0].x,
        piece[piece.length - 1]?.x ?? 0,
      ]);
      return Math.max(...xs) - Math.min(...xs);
    };
    // an opening is drawn smaller by the kerf, a piece larger
    expect(across(opening)).toBeCloseTo(40 - 0.2, 1);
    expect(across(inlay)).toBeCloseTo(40 + 2 * 6 + 0.2, 1);
  });

  test.each([
    ['mirrored', { sheetLies: 'outside-up' }],
    ['in inches, perforated', { rootUnit: 'in', userUnit: '1/96 in', score: { as: 'perforation' } }],
    ['filled', { layers: { cut: { paint: 'fill' } } }],
    ['every outline', { outline: 'always' }],
    ['no outline', { outline: 'never' }],
  ])('are plain drawings in a convention: %s', async (_, convention) => {
    const [example] = setExamples.drawSetSheets ?? [];
    const files = filesOf(sheetsOf(await planned({ ...(example?.body as object), convention })));
    const sheets = [...files].filter(([name]) => /^sheet-\d\d\.svg$/u.test(name));
    expect(sheets.length).toBeGreaterThan(1);
    for (const [, svg] of sheets) {
      const { groups } = readSvg(svg);
      const ids = groups.map(({ id }) => id);
      expect(ids).toEqual(['score', 'knockout', 'cut']);
      const filled = 'layers' in convention;
      if (!filled)
        expect(overlapsAmong(piecesOf(everyGroup(groups).flatMap(({ paths }) => paths)))).toEqual([]);
      for (const { subpaths } of pathsIn(
        groups[0] ?? { id: '', title: '', attributes: {}, paths: [], groups: [] },
      ))
        expect(subpaths.some(({ closed }) => closed)).toBe(false);
      const cut = groups.find(({ id }) => id === 'cut');
      if (filled)
        expect(cut?.paths.every(({ subpaths }) => subpaths.every(({ closed }) => closed))).toBe(true);
      if ('outline' in convention && convention.outline === 'never') expect(cut?.paths).toEqual([]);
    }
  });
});

describe('the archive', () => {
  test('holds the plan, a picture, the cautions and every sheet; the same set gives the same bytes', async () => {
    const app = await build();
    const [example] = setExamples.drawSetSheets ?? [];
    const ask = (url: string) => app.inject({ method: 'POST', url, payload: example?.body as object });
    const reply = await ask('/v1/sets/sheets');
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toBe('application/zip');
    const files = unzip(reply.rawPayload);
    const plan = (await ask('/v1/sets/plan')).json();
    const manifest = JSON.parse(files.find(({ name }) => name === 'manifest.json')?.text ?? '');
    expect(manifest).toEqual(plan);
    const sheets = manifest.papers.flatMap(({ layouts }: { layouts: { file: string }[] }) =>
      layouts.map(({ file }) => file),
    );
    expect(files.map(({ name }) => name)).toEqual([
      'manifest.json',
      'cautions.txt',
      'contact-sheet.svg',
      ...sheets,
    ]);
    expect(files.find(({ name }) => name === 'cautions.txt')?.text).toContain('Lasers');
    // 1 January 1980, 0:00, as MS-DOS counts
    expect(new Set(files.map(({ stamp }) => stamp))).toEqual(new Set([0x00210000]));
    expect((await ask('/v1/sets/sheets')).rawPayload.equals(reply.rawPayload)).toBe(true);
  });

  test('a damaged one is seen', async () => {
    const body = {
      units: 'mm',
      kits: 1,
      papers: [{ width: 100, height: 100 }],
      pieces: [{ name: 'mat', cut: { width: 45, height: 45 } }],
    };
    const archive = sheetsOf(await planned(body));
    const damaged = Buffer.from(archive);
    damaged[60] = (damaged[60] ?? 0) ^ 0xff;
    expect(() => unzip(archive)).not.toThrow();
    expect(() => unzip(damaged)).toThrow();
  });
});
