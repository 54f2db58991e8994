import { describe, expect, test } from 'vitest';
import { proofOf } from '../../shared/folding/proof-of.ts';
import { inMm } from '../../shared/lengths/show-length.ts';
import { showPlan } from '../../shared/plan-reply/show-plan.ts';
import type { Plan } from '../../shared/solver/plan.ts';
import { solveFolder } from '../../shared/solver/solve-folder.ts';
import { solved } from '../support/solved.ts';

/*
 * One example of each style, worked out by hand. Unless a line names its source, a rule is common practice. Millimetres.
 *
 * Every folder here is of paper 0.3 mm thick that loses nothing in a fold, without a grid, with tape of 6 mm.
 */
const usual = {
  stock: { width: '700 mm', height: '700 mm', caliper: '0.3 mm', foldFactor: 0 },
  grid: 'none',
  glue: { width: '6 mm' },
};
const { glue: _, ...unglued } = usual;

/** Cards of 100 × 150 mm that stand upright. */
const cards = (perPocket: number, thickness: string) => ({
  item: { width: '100 mm', height: '150 mm' },
  perPocket,
  thickness,
  turned: false,
});

/** Some dimensions of a plan in millimetres, and its blank. */
function found(plan: Plan, names: readonly string[]) {
  const { width, height } = plan.blank;
  return {
    ...Object.fromEntries(names.map((name) => [name, inMm(plan.dimensions[name] ?? Number.NaN)])),
    blank: [inMm(width), inMm(height)],
  };
}

function expectFound(
  raw: object,
  expected: Readonly<Record<string, number | readonly [number, number]>>,
): Plan {
  const plan = solved(raw);
  expect(proofOf(plan).proof.holds).toBe(true);
  const names = Object.keys(expected).filter((name) => name !== 'blank');
  const real = found(plan, names);
  for (const [name, value] of Object.entries(expected)) {
    const got = real[name as keyof typeof real];
    for (const [index, one] of [value].flat().entries())
      expect([got].flat()[index], name).toBeCloseTo(one, 5);
  }
  return plan;
}

const scoresOf = (plan: Plan) => {
  const { scores } = showPlan(proofOf(plan), { alternatives: [], fittings: undefined });
  return {
    vertical: scores.vertical.map(({ mm }) => mm),
    horizontal: scores.horizontal.map(({ mm }) => mm),
  };
};

describe('a pocket folder for two cards of 2 mm in each pocket', () => {
  const plan = () =>
    expectFound(
      { ...usual, style: 'pocket-folder', contents: cards(2, '2 mm'), prefer: 'least-paper' },
      {
        // the card, its stack of 4, 3 of play, and at the spine a notch of 1.5 that widens by 3, 1.5 to the tape, the
        // tape, and 1 beside it
        'panel.width': 100 + 4 + 3 + (1.5 + 3 + 1.5 + 6 + 1),
        // the card, half of its stack and 6 of play
        'panel.height': 150 + 2 + 6,
        // both stacks, four layers that hinge at mid-sheet, 1 of play: G = S + (n − 1) t + e
        spine: 8 + 3 * 0.3 + 1,
        // the tape, 1.5 inside its edge and 2 beside its score
        tab: 6 + 1.5 + 2,
        // half of a cover of this size
        pocket: 79,
        blank: [2 * 120 + 9.9 + 2 * 9.5, 158 + 79],
      },
    );

  test('is as large as it must be', () => {
    plan();
  });

  test('is scored from the left: tab, cover, spine, cover', () => {
    expect(scoresOf(plan())).toEqual({ vertical: [9.5, 129.5, 139.4, 259.4], horizontal: [158] });
  });

  test('has pockets as wide as card, stack and play: girth 2 (w + S) ≤ 2 × width', () => {
    const { proof } = proofOf(plan());
    for (const { width } of proof.pockets) expect(inMm(width)).toBeCloseTo(107, 5);
  });
});

/** Slots of a plan in millimetres: left, top, right, bottom. */
const slotsOf = (plan: Plan) =>
  showPlan(proofOf(plan), { alternatives: [], fittings: undefined }).locks?.map(({ slot, neck }) => ({
    slot: [slot.left, slot.top, slot.right, slot.bottom].map(({ mm }) => mm),
    neck: neck.mm,
  }));

describe('the same pocket folder, locked with tongues and slots', () => {
  // the slot is 1 mm wide (or three times the paper), 6 mm inside the cover's edge; beyond it a neck of 2 and a tongue of 8
  const tab = 6 + 0.5 + 2 + 8;
  const width = 100 + 4 + 3 + tab - 9.9 / 2 + 1;
  const plan = () =>
    expectFound(
      { ...usual, style: 'pocket-folder', join: 'slots', contents: cards(2, '2 mm'), prefer: 'least-paper' },
      {
        tab,
        spine: 9.9,
        // the card, its stack and play; at the spine the pocket ends where its tab reaches to 1 mm from the spine's middle
        'panel.width': width,
        'panel.height': 158,
        pocket: 79,
        blank: [2 * width + 9.9 + 2 * tab, 158 + 79],
      },
    );

  test('has four slots as long as its tongues but 2 mm at each shoulder, which is 40 mm', () => {
    // half of the pocket below the fold is half of it above
    const [top, bottom] = [158 - 39.5 - 18, 158 - 39.5 + 18];
    const inset = tab - 9.9 / 2 + 1;
    const [spineLeft, spineRight] = [tab + width, tab + width + 9.9];
    expect(slotsOf(plan())).toEqual(
      [tab + 6.5, spineLeft - inset - 6.5, spineRight + inset + 6.5, spineRight + width - 6.5].map(
        (middle) => ({
          slot: [middle - 0.5, top, middle + 0.5, bottom].map((value) => expect.closeTo(value, 5)),
          // twice the paper, and 0.5 mm at least, narrower than the slot
          neck: expect.closeTo(36 - 0.6, 5),
        }),
      ),
    );
  });

  test('holds what the glued one holds', () => {
    const { proof } = proofOf(plan());
    for (const pocket of proof.pockets) expect(inMm(pocket.width)).toBeCloseTo(107, 5);
    expect(proof.checks.map(({ name }) => name)).toContain('locks');
  });
});

test('a tuck box of paper 0.4 mm thick, locked: slots three times as wide as the paper', () => {
  const plan = expectFound(
    {
      ...unglued,
      stock: { ...usual.stock, caliper: '0.4 mm' },
      style: 'tuck-box',
      join: 'slots',
      dimensions: { panel: { width: '60 mm', height: '90 mm' }, depth: '20 mm' },
    },
    { tab: 6 + 0.6 + 2 + 8, 'panel.height': 90, blank: [16.6 + 2 * 60 + 2 * 20, 90 + 2 * 19.6 + 2 * 14] },
  );
  // 90 mm less 0.4 for the paper, 1 and 4 mm of taper at each end leave 79.2: one tongue of 40, in its middle
  const middle = 19.6 + 14 + 45;
  const end = 16.6 + 2 * 60 + 2 * 20;
  expect(slotsOf(plan)).toEqual([
    {
      slot: [end - 6.6 - 0.6, middle - 18, end - 6.6 + 0.6, middle + 18].map((value) =>
        expect.closeTo(value, 5),
      ),
      neck: expect.closeTo(36 - 0.8, 5),
    },
  ]);
});

test.each([
  // half of the slot, the paper and 0.5 mm; slot and neck leave 0.5 mm beside the kerf
  { caliper: 1, kerf: 0.1, slot: 3, neck: 1.5 + 1 + 0.5 },
  { caliper: 0.3, kerf: 2, slot: 2.5, neck: 2 + 0.5 },
])('a locked band of paper of $caliper mm, cut with a kerf of $kerf mm', ({ caliper, kerf, slot, neck }) => {
  const band = (overlap: number) => ({
    ...unglued,
    stock: { ...usual.stock, caliper: `${caliper} mm` },
    cutter: { width: '700 mm', height: '700 mm', kerf: `${kerf} mm` },
    style: 'belly-band',
    join: 'slots',
    dimensions: {
      panel: { width: '100 mm', height: '40 mm' },
      side: '10 mm',
      overlap: `${overlap} mm`,
    },
  });
  const least = 6 + slot / 2 + neck + 8;
  const plan = expectFound(band(least), { blank: [2 * 100 + 2 * 10 + least, 40] });
  expect(solveFolder(solved.spec(band(least - 0.01))).ok).toBe(false);
  const [[left = 0, , right = 0] = []] = slotsOf(plan)?.map(({ slot: sides }) => sides) ?? [];
  expect(right - left).toBeCloseTo(slot, 5);
});

test('a slip sleeve: inside width w + S + e with e = 3 mm, a notch of 10 to 13 mm radius', () => {
  expectFound(
    { ...usual, style: 'slip-sleeve', contents: cards(3, '2 mm') },
    {
      'panel.width': 100 + 6 + 3,
      'panel.height': 150 + 3 + 3,
      tab: 15,
      notch: 12,
      blank: [15 + 2 * 109, 156 + 15],
    },
  );
});

describe('a gate wallet for four cards of 1 mm', () => {
  const raw = { ...usual, style: 'gate-wallet', contents: cards(4, '1 mm') };

  test('with doors that meet, 3 mm apart', () => {
    const plan = expectFound(raw, {
      'panel.width': 107,
      'panel.height': 158,
      // the stack, four layers, 1 of play
      hinge: 4 + 3 * 0.3 + 1,
      outerHinge: 5.9,
      leftDoor: 52,
      rightDoor: 52,
      pocket: 79,
      blank: [52 + 5.9 + 107 + 5.9 + 52, 158 + 79],
    });
    expect(scoresOf(plan).vertical).toEqual([52, 57.9, 164.9, 170.8]);
  });

  test('with doors that overlap by 25 mm, the outer hinge deeper by the paper', () => {
    expectFound(
      { ...raw, doors: 'overlapping' },
      { hinge: 5.9, outerHinge: 6.2, leftDoor: 66, rightDoor: 66, blank: [66 + 5.9 + 107 + 6.2 + 66, 237] },
    );
  });
});

describe('a four-flap wrap', () => {
  // 20-point board, as the Indiana University Libraries Book Repair Manual uses for four flaps: 0.508 mm
  const board = { width: '700 mm', height: '700 mm', caliper: '0.508 mm', foldFactor: 0 };

  test('has hinges of the thickness, each deeper than the one before by the board', () => {
    const plan = expectFound(
      { ...unglued, style: 'four-flap-wrap', stock: board, contents: cards(5, '2 mm') },
      {
        // 2 of play, and a wall's inside is a caliper shorter than it is drawn
        'panel.width': 100 + 2 + 0.508,
        'panel.height': 150 + 2 + 0.508,
        // outer pair of flaps: thickness and card thickness (library wrappers)
        hinge: 10 + 0.508 + 1,
        bottomHinge: 10 + 2 * 0.508 + 1,
        topHinge: 10 + 3 * 0.508 + 1,
        sideFlap: (102.508 - 2) / 2,
        blank: [102.508 + 2 * 11.508 + 2 * 50.254, 152.508 + 12.016 + 12.524 + 0.6 * 152.508 + 0.7 * 152.508],
      },
    );
    // NEDCC leaflet 4.6: a one-piece enclosure adds four card thicknesses to the shelf space
    expect(inMm(plan.closed.thickness)).toBeCloseTo(10 + 4 * 0.508, 5);
  });

  test('of an item 20 cm long and 0.5 cm thick is 51 cm long, as the manual’s wrapper: 2 L + 2 T + F, F = L / 2', () => {
    // Indiana University Libraries Book Repair Manual. Ours ends the long flap 3 mm short of the hinge across, and
    // makes the outer hinge deeper by the paper, 0.3 mm.
    const plan = solved({
      ...unglued,
      style: 'four-flap-wrap',
      dimensions: {
        panel: { width: '100 mm', height: '200 mm' },
        hinge: '4.7 mm',
        bottomHinge: '5 mm',
        topHinge: '5.3 mm',
        bottomFlap: '197 mm',
        topFlap: '100 mm',
      },
    });
    expect(inMm(plan.blank.height)).toBeCloseTo(510 - 3 + 0.3, 5);
  });
});

describe('a belly band of paper 0.3 mm thick', () => {
  const aroundBy = (width: number, thickness: number) =>
    // 2 (W + T) + π t + overlap + e: the mid-plane of four bends of 90°, overlap 20 to 25, e = 1
    2 * (width + thickness) + Math.PI * 0.3 + 22 + 1;

  test('around a thick stack has two scores at each side', () => {
    const plan = expectFound(
      { ...usual, style: 'belly-band', contents: cards(5, '2 mm') },
      { side: 10 + 2 * 0.3, overlap: 22, 'panel.height': 50, blank: [aroundBy(100, 10), 50] },
    );
    expect(scoresOf(plan).vertical).toHaveLength(4);
  });

  test('around a stack thinner than two scores can be apart has one', () => {
    const plan = expectFound(
      { ...usual, style: 'belly-band', contents: cards(1, '2 mm') },
      { side: 0, blank: [aroundBy(100, 2), 50] },
    );
    expect(scoresOf(plan).vertical).toHaveLength(2);
  });
});

test.each([{ join: 'glue' }, { join: 'slots' }])(
  'a belly band on a grid of 1/8 in has its scores on it',
  ({ join }) => {
    const plan = expectFound(
      {
        style: 'belly-band',
        units: 'in',
        join,
        stock: { width: 24, height: 24, caliper: '0.3 mm' },
        grid: 0.125,
        dimensions: { panel: { width: 4.5, height: 2 }, side: 0.5, overlap: 0.875 },
      },
      { blank: [(2 * 4.5 + 2 * 0.5 + 0.875) * 25.4, 50.8] },
    );
    // half of width and overlap is 2 11/16 in: the nearest steps are 2 5/8 and 2 3/4, and one end has the rest
    expect(scoresOf(plan).vertical.map((score) => Math.round((score / 25.4) * 1e6) / 1e6)).toEqual([
      2.625, 3.125, 7.625, 8.125,
    ]);
  },
);

test('a belly band on a coarse grid still has both ends within its back', () => {
  const plan = expectFound(
    {
      ...usual,
      style: 'belly-band',
      grid: '50 mm',
      dimensions: { panel: { width: '90 mm', height: '40 mm' }, side: '10 mm', overlap: '30 mm' },
    },
    { blank: [2 * 90 + 2 * 10 + 30, 40] },
  );
  // half of them is 60, and 50 lies between the 30 of the overlap and the 90 of the back, 3 mm clear of both
  expect(scoresOf(plan).vertical).toEqual([50, 60, 150, 160]);
  const narrow = solved({
    ...usual,
    style: 'belly-band',
    grid: '50 mm',
    dimensions: { panel: { width: '95 mm', height: '40 mm' }, side: '10 mm', overlap: '49 mm' },
  });
  expect(proofOf(narrow).proof.holds).toBe(true);
  expect(scoresOf(narrow).vertical[0]).toBe(72);
});

test('a tuck box by the carton engineers’ step: drawn X = inside + (n − 1) t + k', () => {
  const plan = expectFound(
    {
      ...usual,
      style: 'tuck-box',
      contents: {
        item: { width: '60 mm', height: '90 mm' },
        perPocket: 10,
        thickness: '2 mm',
        turned: false,
      },
    },
    {
      // one wall between two creases: inside = drawn − t; k = 3 in width
      'panel.width': 60 + 3 + 0.3,
      // dust flaps lie a caliper within lid and bottom; k = 2 in height
      'panel.height': 90 + 2 + 3 * 0.3,
      // back, tab and tuck flap around the stack, and the front outside of the tuck flap
      lid: 20 + 2 * 0.3 + 1,
      depth: 20 + 3 * 0.3 + 1,
      tab: 12,
      tuck: 14,
      dustFlap: 0.45 * 63.3,
      blank: [12 + 2 * 21.9 + 2 * 63.3, 92.9 + 2 * 21.6 + 2 * 14],
    },
  );
  expect(scoresOf(plan).vertical).toEqual([12, 33.9, 97.2, 119.1]);
  // lids and tuck flaps at the back; dust flaps hinged a caliper within
  expect(scoresOf(plan).horizontal).toEqual([14, 35.6, 35.9, 128.2, 128.5, 150.1]);
});

describe('an envelope', () => {
  test('for a 4 1/4 × 5 1/2 in card 0.5 mm thick: 6 mm of play on the length, 3 mm on the height, gum 13 mm deep', () => {
    const plan = expectFound(
      {
        ...usual,
        style: 'envelope',
        contents: { item: { width: '5 1/2 in', height: '4 1/4 in' }, thickness: '0.5 mm', turned: false },
      },
      {
        'panel.width': 139.7 + 0.5 + 6,
        'panel.height': 107.95 + 0.25 + 3,
        side: 20,
        back: 0.8 * 111.2,
        flap: 0.4 * 111.2,
        // US Government Paper Specification Standards, V20 and V25: gum at least 13 mm (0.5 in) deep
        gum: 13,
        blank: [146.2 + 2 * 20, 111.2 + 88.96 + 44.48],
      },
    );
    expect(scoresOf(plan)).toEqual({ vertical: [20, 166.2], horizontal: [44.48, 155.68] });
  });

  test('for a flat item 10 × 20 cm is W + 5 cm wide and 2.25 L long, as a library’s pocket', () => {
    // Indiana University Libraries Book Repair Manual, its pocket's blank with T = 0: width W + 2 T + 5 cm, length
    // 2.25 L + 2 T. Ours ends the back 3 mm below the mouth.
    const plan = solved({
      ...usual,
      style: 'envelope',
      dimensions: {
        panel: { width: '100 mm', height: '200 mm' },
        side: '25 mm',
        back: '197 mm',
        flap: '50 mm',
      },
    });
    expect([plan.blank.width, plan.blank.height].map(inMm)).toEqual([150, 450 - 3]);
  });
});

describe('a card base', () => {
  test('of US A2, a quarter of letter: half a sheet folded once', () => {
    expectFound(
      { ...unglued, style: 'card-base', card: { size: 'us-a2' } },
      { blank: [8.5 * 25.4, 5.5 * 25.4] },
    );
  });

  test('of three A6 panels to and fro is three times as wide', () => {
    expectFound(
      { ...unglued, style: 'card-base', card: { size: 'iso-a6' }, fold: 'zigzag' },
      { blank: [315, 148] },
    );
  });

  test('of four A6 panels rolled up: each within the one around it is narrower by the paper and 1 mm', () => {
    // panel j + 1 = panel j less (layers enclosed) t and a nesting step of 1.0 to 1.6 mm by hand
    const plan = expectFound(
      { ...unglued, style: 'card-base', card: { size: 'iso-a6' }, fold: 'roll', panels: 4 },
      { step: 1.3, blank: [105 + 105 + 103.7 + 102.4, 148] },
    );
    expect(scoresOf(plan).vertical).toEqual([105, 210, 313.7]);
  });

  test('of A6 with two doors has them 3 mm apart: gate folds have 3 to 15 mm', () => {
    const plan = expectFound(
      { ...unglued, style: 'card-base', card: { size: 'iso-a6' }, fold: 'gate' },
      { gap: 3, blank: [51 + 105 + 51, 148] },
    );
    expect(scoresOf(plan).vertical).toEqual([51, 156]);
  });
});

test('a tag is 2 × 3 1/2 in unless somebody says otherwise, its corners 28 % of its width', () => {
  const plan = expectFound(
    { ...unglued, style: 'tag', units: 'in' },
    { 'panel.width': 50.8, 'panel.height': 88.9, corner: 0.28 * 50.8, blank: [50.8, 88.9] },
  );
  // six corners: the four of the rectangle, of which two are cut off
  const { pattern } = proofOf(plan);
  const corner = 14.224;
  expect(
    pattern.vertices.map(({ x, y }) => [inMm(x), inMm(y)]).toSorted(([a = 0], [b = 0]) => a - b),
  ).toEqual(
    expect.arrayContaining([
      [corner, 0],
      [36.576, 0],
      [50.8, corner],
      [0, corner],
      [0, 88.9],
      [50.8, 88.9],
    ]),
  );
});

test('a divider for A6 cards has a tab of 3/8 in over the second third of its width', () => {
  const plan = expectFound(
    { ...unglued, style: 'insert', card: { size: 'iso-a6' }, tab: { place: 2, of: 3 } },
    { 'tab.width': 35, 'tab.height': 9.525, blank: [105, 148 + 9.525] },
  );
  const xs = proofOf(plan).pattern.vertices.map(({ x }) => inMm(x));
  expect([...new Set(xs)].toSorted((a, b) => a - b)).toEqual([0, 35, 37, 68, 70, 105]);
});
