import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GlueStep, GlueStrip, Step } from '../../shared/creases/fold-program.ts';
import { glueLength, tapeLength } from '../../shared/creases/glue-length.ts';
import { unfold } from '../../shared/creases/unfold.ts';
import { type Folded, promisedBy } from '../../shared/folding/proof-of.ts';
import { prove } from '../../shared/folding/prove.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { showGlue } from '../../shared/plan-reply/show-glue.ts';
import { easySleeve, everyKind, foldedFrom, sleeves } from '../support/sleeves.ts';

/*
 * Distances of glue are common practice: 1.5 mm inside edges, 2 mm from scores, 3 mm from a pocket's mouth.
 */

const isGlue = (step: Step): step is GlueStep => step.kind === 'glue';
const glueIn = ({ program }: Folded) => program.steps.filter(isGlue);
const stepFor = (folded: Folded, holds: string): GlueStep => {
  const step = glueIn(folded).find((each) => each.holds === holds);
  if (!step) throw new Error(`the ${holds} are not glued`);
  return step;
};

/** What the proof says of a sleeve's glue when its steps are changed; the other checks must go on holding. */
function saysOf({ plan, program }: Folded, steps: readonly Step[]): string {
  const mutant = { ...program, steps };
  const { checks } = prove(unfold(mutant), mutant, promisedBy(plan));
  const failing = checks.filter(({ holds }) => !holds);
  expect(failing.filter(({ name }) => name !== 'glue')).toEqual([]);
  return failing.map(({ message }) => message).join();
}

/** The same, with every strip of one glue step changed. */
const withStrips = (folded: Folded, holds: string, change: (strip: GlueStrip) => GlueStrip, width?: number) =>
  saysOf(
    folded,
    folded.program.steps.map((step) =>
      isGlue(step) && step.holds === holds
        ? { ...step, width: width ?? step.width, strips: step.strips.map(change) }
        : step,
    ),
  );

/** The same, with one more strip where one glue step has its own. */
const withStrip = (folded: Folded, holds: string, strip: GlueStrip) =>
  saysOf(
    folded,
    folded.program.steps.map((step) =>
      isGlue(step) && step.holds === holds ? { ...step, strips: [...step.strips, strip] } : step,
    ),
  );

const box = (left: number, top: number, right: number, bottom: number) => ({
  left: mm(left),
  top: mm(top),
  right: mm(right),
  bottom: mm(bottom),
});

describe('by hand, for a blank of 270 × 320 mm: hems of 30, a top flap of 60, an overlap of 20', () => {
  const folded = foldedFrom(easySleeve);
  const inMm = ({ left, top, right, bottom }: GlueStrip) =>
    [left, top, right, bottom].map((nm) => Math.round(nm / 1e4) / 100);
  const boxes = (holds: string) =>
    Object.fromEntries(
      stepFor(folded, holds).strips.map((strip) => [`${strip.panel} ${strip.face}`, inMm(strip)]),
    );

  test('the hems, 1.5 mm inside their edges and 2 mm from scores', () => {
    expect(boxes('hems')).toEqual({
      // beyond the corner of 30 mm
      'top flap, left hem outside': [1.5, 31.5, 7.85, 58],
      'top flap, right hem outside': [262.15, 31.5, 268.5, 58],
      'left hem outside': [1.5, 62, 7.85, 208],
      'right hem outside': [262.15, 62, 268.5, 208],
      'bottom flap, left hem outside': [1.5, 212, 7.85, 288.5],
      'bottom flap, right hem outside': [262.15, 212, 268.5, 288.5],
    });
  });

  test('the seam, 1.5 mm short of the bottom flap’s edge, 3 mm from the mouths, not on the spine’s scores', () => {
    expect(boxes('seam')).toEqual({
      'top flap, front outside': [33, 12.15, 128, 18.5],
      'top flap, spine outside': [132, 12.15, 138, 18.5],
      'top flap, back outside': [142, 12.15, 237, 18.5],
    });
    expect(stepFor(folded, 'seam').strips.map(({ to }) => to)).toEqual([
      'bottom flap, front',
      'bottom flap, back',
      'bottom flap, spine',
    ]);
  });

  test('the corners, beside the mouth, more than 2 mm from their score at 45°', () => {
    // from 3 mm to 30 - 3 - 3 - 6.35 = 17.65 mm, which is 3 / √2 mm short of the score
    expect(boxes('corners')['top flap, left hem inside']).toEqual([3, 3, 17.65, 9.35]);
    expect(boxes('corners')['bottom flap, right hem inside']).toEqual([252.35, 310.65, 267, 317]);
  });

  test('the tape: 498 mm, 196 mm and 58.6 mm, and a tenth more', () => {
    const lengths = ['hems', 'seam', 'corners'].map((holds) => glueLength(stepFor(folded, holds)) / 1e6);
    expect(lengths.map((length) => Math.round(length * 10) / 10)).toEqual([498, 196, 58.6]);
    expect(tapeLength(glueIn(folded)) / 1e6).toBeCloseTo(1.1 * 752.6, 6);
    const { glue, tapeLength: tape } = showGlue(folded.program);
    expect(tape.mm).toBe(828);
    expect(glue.map(({ name, length }) => [name, Math.round(length.mm)])).toEqual([
      ['glue at the corners', 59],
      ['glue at the hems', 498],
      ['glue at the seam', 196],
    ]);
    expect(glue[1]?.strips[0]).toMatchObject({
      panel: 'top flap, left hem',
      to: 'top flap, front',
      face: 'outside',
      left: { mm: 1.5 },
      bottom: { mm: 58 },
    });
  });
});

test.each([
  ['out', 46.5, 288.5],
  ['in', 31.5, 273.5],
] as const)('tucked hems turned %s stay open where the other flap is slipped in', (turn, from, to) => {
  // an overlap of 45 mm is deeper than the corners; slipped in is 45 mm and 1.5 mm more
  const raw = { ...easySleeve, hem: { turn }, dimensions: { ...easySleeve.dimensions, overlap: '45 mm' } };
  const { strips } = stepFor(foldedFrom(raw), 'hems');
  const height = 345;
  expect(strips.find(({ panel }) => panel === 'top flap, left hem')?.top).toBe(mm(from));
  expect(strips.find(({ panel }) => panel === 'bottom flap, left hem')?.bottom).toBe(mm(height - 320 + to));
});

test('every sleeve is glued, and its proof holds', () => {
  fc.assert(
    fc.property(sleeves, (raw) => {
      const folded = foldedFrom(raw);
      expect(folded.proof.checks.filter(({ name, holds }) => name === 'glue' && !holds)).toEqual([]);
      expect(stepFor(folded, 'hems').strips.length).toBeGreaterThanOrEqual(2);
      // a narrower cover has no room for 5 mm of tape clear of its mouth, of a flat seam's hem, and of the spine
      if ((folded.plan.dimensions['panel.width'] ?? 0) >= mm(18))
        expect(stepFor(folded, 'seam').strips.length).toBeGreaterThanOrEqual(2);
    }),
    { numRuns: 400 },
  );
});

describe.each(everyKind)('corners $corners, hems $hem.turn, seam $seam', (raw) => {
  const folded = foldedFrom(raw);
  const out = raw.hem.turn === 'out';

  test('passes unspoilt', () => {
    expect(saysOf(folded, folded.program.steps)).toBe('');
  });

  test('a strip wider than its hem', () => {
    const wide = (strip: GlueStrip) =>
      strip.left < mm(30) ? { ...strip, right: mm(35) } : { ...strip, left: mm(235) };
    expect(withStrips(folded, 'hems', wide, mm(33.5))).toContain('too near to an edge or a score');
  });

  test('a strip by a hair too near to its edge, or to a score', () => {
    const shifted = (x: number, y: number) => (strip: GlueStrip) => ({
      ...strip,
      left: strip.left + x,
      right: strip.right + x,
      top: strip.top + y,
      bottom: strip.bottom + y,
    });
    expect(withStrips(folded, 'hems', shifted(1, 1))).toBe('');
    expect(withStrips(folded, 'hems', shifted(-5, 0))).toContain('too near');
    expect(withStrips(folded, 'hems', shifted(0, 5))).toContain('too near');
    expect(withStrips(folded, 'seam', shifted(0, 5))).toContain('too near');
  });

  test('a strip that glues a pocket shut, from either side', () => {
    const on = box(70, 65, 110, 71.35);
    const back = { panel: 'front', face: 'inside', to: 'top flap, front', ...on } as const;
    expect(withStrip(folded, 'seam', back)).toContain('glues the front pocket shut');
    const front = {
      panel: 'top flap, front',
      face: 'inside',
      to: 'front',
      ...on,
      ...box(70, 40, 110, 46.35),
    };
    expect(withStrip(folded, 'seam', { ...front, face: 'inside' })).toContain('glues the front pocket shut');
    const second = { ...back, panel: 'back', to: 'top flap, back', ...box(160, 65, 200, 71.35) } as const;
    expect(withStrip(folded, 'seam', second)).toContain('glues the back pocket shut');
  });

  test('a strip that holds something else than it says, or nothing', () => {
    const wrong = {
      panel: 'front',
      face: 'inside',
      to: 'bottom flap, front',
      ...box(70, 65, 110, 71.35),
    } as const;
    expect(withStrip(folded, 'seam', wrong)).toContain('sticks to top flap, front instead of');
    expect(withStrip(folded, 'hems', wrong)).toContain('sticks to nothing instead of');
    const face = out ? ('inside' as const) : ('outside' as const);
    expect(withStrips(folded, 'hems', (strip) => ({ ...strip, face }))).toContain('instead of');
    expect(withStrips(folded, 'seam', (strip) => ({ ...strip, panel: 'pleat' }))).toContain('lies elsewhere');
  });

  test('a seam that is glued where the flaps do not overlap, or before they do', () => {
    const beyond = (strip: GlueStrip) => ({ ...strip, top: mm(15), bottom: mm(21.35) });
    expect(withStrips(folded, 'seam', beyond)).toContain('too near to an edge or a score of bottom flap');
    const seam = stepFor(folded, 'seam');
    const others = folded.program.steps.filter((step) => step !== seam);
    const early = others.findIndex(({ name }) => name === 'bottom flap');
    expect(saysOf(folded, others.toSpliced(early, 0, seam))).toContain('sticks to nothing');
  });

  test('a strip as wide as it is not said to be, and one without room', () => {
    expect(withStrips(folded, 'hems', (strip) => strip, mm(5))).toContain('not as wide');
    expect(withStrips(folded, 'hems', (strip) => ({ ...strip, bottom: strip.top }))).toContain('no room');
  });
});

test.each(['folded', 'mitred'])('a seam 2.5 mm from the mouth, corners %s', (corners) => {
  const folded = foldedFrom({ ...easySleeve, corners });
  const near = (strip: GlueStrip) =>
    strip.panel === 'top flap, front' ? { ...strip, left: mm(32.5) } : strip;
  expect(withStrips(folded, 'seam', near)).toContain('too near to the mouth of the front pocket');
  const far = (strip: GlueStrip) => (strip.panel === 'top flap, front' ? { ...strip, left: mm(33) } : strip);
  expect(withStrips(folded, 'seam', far)).toBe('');
});

test.each(['out', 'in'] as const)('a hem turned %s that is glued where something is slipped in', (turn) => {
  const raw = {
    ...easySleeve,
    corners: 'mitred',
    hem: { turn },
    dimensions: { ...easySleeve.dimensions, overlap: '45 mm' },
  };
  const folded = foldedFrom(raw);
  const whole = (strip: GlueStrip): GlueStrip => {
    if (strip.panel.startsWith('top flap')) return { ...strip, top: mm(31.5) };
    return strip.panel.startsWith('bottom flap') ? { ...strip, bottom: mm(345 - 31.5) } : strip;
  };
  const [open, slipped] = turn === 'out' ? ['top flap', 'front'] : ['bottom flap', 'front'];
  expect(withStrips(folded, 'hems', whole)).toContain(
    `glue at the hems, on ${open}, left hem: it does not stay on ${open}, ${slipped}`,
  );
  // nothing is slipped in where the seam is flat
  expect(withStrips(foldedFrom({ ...raw, seam: 'flat' }), 'hems', whole)).toBe('');
});

test('a hem just deep enough for its tape by the bounds: the line is narrower by what its score needs', () => {
  const dimensions = { ...easySleeve.dimensions, hem: '9.35 mm' };
  const folded = foldedFrom({ ...easySleeve, dimensions, grid: 'none' });
  expect(stepFor(folded, 'hems').width).toBe(mm(5.85));
  expect(glueIn(folded).map(({ holds }) => holds)).toEqual(['hems', 'seam']);
});

test('another width of tape', () => {
  const folded = foldedFrom({ ...easySleeve, glue: { width: '3 mm' } });
  const wide = glueIn(folded).flatMap(({ strips }) =>
    strips.map(({ left, right, top, bottom }) => Math.min(right - left, bottom - top)),
  );
  expect(new Set(wide)).toEqual(new Set([mm(3)]));
});
