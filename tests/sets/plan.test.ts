import { describe, expect, test } from 'vitest';
import type { SetPlanReply } from '../../shared/sets/set-plan-reply.ts';
import { build } from '../src/build.ts';
import { expectProblem } from '../src/expect-problem.ts';

const papers = [
  {
    name: 'Chart white',
    width: 200,
    height: 110,
    caliper: 0.33,
    grammage: 200,
    count: 1,
    packOf: 5,
    price: { perSheet: 0.5, currency: 'EUR' },
  },
];
const card = {
  name: 'card',
  minutes: 3,
  make: { style: 'card-base', units: 'mm', dimensions: { panel: { width: 80, height: 110 } } },
};
const mat = { name: 'mat', perKit: 2, minutes: 0.5, cut: { width: 50, height: 55 } };
const set = { units: 'mm', kits: 10, pieces: [card, mat], papers };

const ask = async (payload: object, url = '/v1/sets/plan') =>
  (await build()).inject({ method: 'POST', url, payload });
const planned = async (payload: object): Promise<SetPlanReply> => {
  const reply = await ask(payload);
  expect(reply.statusCode, reply.body).toBe(200);
  return reply.json();
};

describe('a set counted by hand', () => {
  test('pieces, sheets, shopping, cost, time and weight', async () => {
    const plan = await planned(set);
    // 10 / 0.95 = 10.5 and 20 / 0.95 = 21.05, rounded up
    expect(plan.pieces.map(({ quantity }) => quantity)).toEqual([11, 22]);
    // the blank is 160 x 110 mm: one on a sheet of 200 x 110 mm, and a strip of 40 mm beside it holds no mat of 50 mm;
    // 8 mats of 50 x 55 mm fill a sheet: 11 + 3 sheets
    expect(plan.papers[0]).toMatchObject({ sheets: 14, bound: 14, gap: 0, proved: true });
    const area = (11 * 160 * 110 + 22 * 50 * 55) / (14 * 200 * 110);
    expect(plan.papers[0]?.utilisation).toBeCloseTo(area, 4);
    expect(plan.shopping).toEqual([
      {
        item: 'Chart white',
        kind: 'paper',
        needed: 14,
        unit: 'sheets',
        have: 1,
        short: 13,
        packs: 3,
        packOf: 5,
        cost: { amount: 7.5, currency: 'EUR' },
      },
    ]);
    expect(plan.perKit).toEqual({
      cost: [{ amount: 0.7, currency: 'EUR' }], // 14 x 0.50 / 10
      unpriced: [],
      minutes: 4, // 3 + 2 x 0.5
      grammes: 4.6, // 200 g/m² x (0.16 x 0.11 + 2 x 0.05 x 0.055) m²
      unweighed: [],
    });
    expect(plan.minutes).toBe(44); // 11 x 3 + 22 x 0.5
  });

  test('ribbon and post', async () => {
    const ribbon = { around: 'card', metres: 1.4, price: { perPack: 2, currency: 'EUR' } };
    const plan = await planned({ ...set, ribbon, post: { piece: 'card' } });
    const { thickness } = plan.pieces[0]?.closed ?? { thickness: { mm: Number.NaN } };
    expect(thickness.mm).toBeGreaterThan(0.6);
    expect(thickness.mm).toBeLessThan(1.2);
    // 2 x (80 + thickness) around, 4 x 40 + 2 x 60 + 6 x 6 for the bow: 477.3 to 478.4 mm, up to whole 5 mm
    expect(plan.ribbon).toEqual({ each: { mm: 480, inch: '≈ 18 57/64' }, count: 11, metres: 5.28 });
    // two lengths to a spool of 1.4 m
    expect(plan.shopping.find(({ kind }) => kind === 'ribbon')).toMatchObject({
      packs: 6,
      cost: { amount: 12, currency: 'EUR' },
    });
    // 3.15 x 4.33 in is below the least face of 3 1/2 x 5 in
    expect(plan.post?.[0]).toMatchObject({ size: 'not mailable', dated: '2021-01-24' });
    expect(plan.post?.every(({ source }) => source.length > 0)).toBe(true);
  });

  test('a one-way paper keeps its pieces upright, others may turn', async () => {
    const tall = {
      kits: 1,
      spoilage: 0,
      units: 'mm',
      pieces: [{ name: 'strip', cut: { width: 190, height: 40 } }],
    };
    const sheet = { width: 60, height: 200 };
    const turned = await planned({ ...tall, papers: [sheet] });
    expect(turned.papers[0]?.layouts[0]?.placed[0]?.turn).toBe(90);
    const refused = await ask({ ...tall, papers: [{ ...sheet, oneWay: true }] });
    expectProblem(refused, 422);
    expect(refused.json().errors[0].path).toBe('/pieces/0');
  });

  test('a sheet that is larger than the cutter takes is cut down, and margins are kept', async () => {
    const plan = await planned({
      ...set,
      pieces: [mat],
      cutter: { width: 120, height: 110, margin: 5 },
    });
    const [layout] = plan.papers[0]?.layouts ?? [];
    expect(layout?.sheet).toMatchObject({ width: { mm: 120 }, height: { mm: 110 } });
    const inside = layout?.placed.every(
      ({ x, y, width, height }) =>
        x.mm >= 5 && y.mm >= 5 && x.mm + width.mm <= 115 && y.mm + height.mm <= 105,
    );
    expect(inside).toBe(true);
    expect(plan.cautions[0]).toMatch(/^Cut each sheet of Chart white down to 120 mm/u);
  });

  test('the other side of the paper outside lies the other way up, on sheets of its own', async () => {
    const small = { style: 'card-base', units: 'mm', dimensions: { panel: { width: 40, height: 50 } } };
    const pieces = [
      { name: 'plain', make: small },
      { name: 'reversed', make: small, shows: 'inside' },
    ];
    const plan = await planned({ ...set, kits: 1, spoilage: 0, pieces });
    expect(plan.papers[0]?.layouts.map(({ faceUp }) => faceUp).toSorted()).toEqual(['inside', 'outside']);
  });

  test('an inlay lies with the side down that will be seen, as its drawing is mirrored', async () => {
    const knockout = {
      kind: 'figure',
      on: { place: 'front' },
      figure: { shape: 'circle', diameter: 20 },
      inlay: { margin: 5 },
    };
    const make = {
      style: 'card-base',
      units: 'mm',
      dimensions: { panel: { width: 60, height: 80 } },
      knockouts: [knockout],
    };
    const inlay = { of: 'card', name: 'inlay-1' };
    const red = { name: 'Signal red', width: 60, height: 60 };
    const faces = async (more: object, convention: object) => {
      const pieces = [
        { ...card, make },
        { name: 'window', paper: 'Signal red', inlay, ...more },
      ];
      const plan = await planned({
        ...set,
        kits: 1,
        spoilage: 0,
        pieces,
        papers: [...papers, red],
        convention,
      });
      return plan.papers[1]?.layouts.map(({ faceUp }) => faceUp);
    };
    expect(await faces({}, {})).toEqual(['inside']);
    expect(await faces({ shows: 'inside' }, {})).toEqual(['outside']);
    expect(await faces({}, { sheetLies: 'outside-up' })).toEqual(['outside']);
  });
});

describe('a set that names what is kept', () => {
  test('has the paper’s count and price, the cutter and the convention', async () => {
    const app = await build();
    const put = async (url: string, payload: object) =>
      expect((await app.inject({ method: 'PUT', url, payload })).statusCode).toBeLessThan(300);
    await put('/v1/stock/harbour%20chart', {
      width: '200 mm',
      height: '110 mm',
      turned: true,
      count: 20,
      price: { perSheet: 2, currency: 'EUR' },
    });
    await put('/v1/cutters/small', { width: '300 mm', height: '300 mm' });
    const named = {
      ...set,
      pieces: [{ ...mat, paper: 'harbour chart' }],
      papers: ['harbour chart'],
      cutter: 'small',
    };
    const reply = await app.inject({ method: 'POST', url: '/v1/sets/plan', payload: named });
    expect(reply.statusCode, reply.body).toBe(200);
    const plan: SetPlanReply = reply.json();
    expect(plan.shopping[0]).toMatchObject({
      item: 'harbour chart',
      needed: 3,
      have: 20,
      short: 0,
      packs: 0,
    });
    expect(plan.perKit.cost).toEqual([{ amount: 0.6, currency: 'EUR' }]);
    const unknown = await app.inject({
      method: 'POST',
      url: '/v1/sets/plan',
      payload: { ...named, papers: ['no such'] },
    });
    expect(unknown.statusCode).toBe(400);
    expect(unknown.json().errors[0].path).toBe('/papers/0');
  });
});

describe('what cannot be planned is refused where it stands', () => {
  test.each<[string, object, number, string]>([
    ['no such paper', { ...set, pieces: [{ ...mat, paper: 'none' }] }, 400, '/pieces/0/paper'],
    ['two of one name', { ...set, pieces: [mat, mat] }, 400, '/pieces/1/name'],
    ['too many pieces', { ...set, kits: 6000, pieces: [mat] }, 400, '/kits'],
    ['a length without unit', { ...set, units: undefined, pieces: [mat] }, 400, '/pieces/0/cut/width'],
    ['an unknown member', { ...set, colour: 'blue' }, 400, '/colour'],
    [
      'a paper of its own',
      { ...set, pieces: [{ ...card, make: { ...card.make, stock: { size: 'iso-a4' } } }] },
      400,
      '/pieces/0/make/stock',
    ],
    ['a ribbon around nothing', { ...set, ribbon: { around: 'mat' } }, 400, '/ribbon/around'],
    [
      'an inlay of nothing',
      { ...set, pieces: [card, { name: 'window', inlay: { of: 'mat', name: 'inlay-1' } }] },
      400,
      '/pieces/1/inlay/of',
    ],
    [
      'an inlay that is not asked for',
      { ...set, pieces: [card, { name: 'window', inlay: { of: 'card', name: 'inlay-1' } }] },
      422,
      '/pieces/1/inlay/name',
    ],
    [
      'a piece larger than its paper',
      { ...set, pieces: [{ ...mat, cut: { width: 300, height: 50 } }] },
      422,
      '/pieces/0',
    ],
    [
      'a margin that leaves nothing',
      { ...set, cutter: { width: 100, height: 100, margin: 50 } },
      400,
      '/cutter/margin',
    ],
  ])('%s', async (_, payload, status, path) => {
    const reply = await ask(payload);
    expectProblem(reply, status);
    expect(reply.json().errors.map((error: { path: string }) => error.path)).toContain(path);
  });

  test('a folder that its paper is too small for', async () => {
    const large = { ...card.make, dimensions: { panel: { width: 150, height: 150 } } };
    const reply = await ask({ ...set, pieces: [mat, { ...card, make: large }] });
    expectProblem(reply, 422);
    const paths: string[] = reply.json().errors.map((error: { path: string }) => error.path);
    expect(paths.length).toBeGreaterThan(0);
    for (const path of paths) expect(path).toMatch(/^\/(?:papers\/0|pieces\/1\/make)/u);
    expect(reply.json().detail).toMatch(/^card: /u);
  });
});
