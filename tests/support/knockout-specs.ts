import fc from 'fast-check';

/** Lists of knockouts on a twin sleeve, as a user writes them; most can be cut, many come near to something. */

const mm = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => `${n} mm`);
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });

const offset = fc.record({ right: mm(0, 25), down: mm(0, 30) }, { requiredKeys: [] });
const anchor = fc.constantFrom('top left', 'top', 'left', 'centre', 'right', 'bottom', 'bottom right');
const place = fc.constantFrom('front cover', 'back cover', 'spine', 'outside', 'front pocket', 'back pocket');
const on = fc.record({ place, anchor: maybe(anchor), offset: maybe(offset) });
const through = fc.constantFrom(undefined, 'seen-layer', 'every-layer');

const figure: fc.Arbitrary<object> = fc.oneof(
  fc.record({ shape: fc.constant('circle'), diameter: mm(3, 40) }),
  fc.record({ shape: fc.constant('heart'), width: mm(8, 40) }),
  fc.record({ shape: fc.constant('star'), points: fc.integer({ min: 4, max: 9 }), diameter: mm(10, 45) }),
  fc.record({ shape: fc.constant('rounded-rectangle'), width: mm(8, 45), height: mm(8, 45) }),
  fc.record({
    artwork: fc.constantFrom(
      'M 0 0 H 30 V 20 H 0 Z M 10 5 V 15 H 20 V 5 Z',
      'M 0 10 C 0 -5 30 -5 30 10 L 15 30 Z',
    ),
    width: mm(10, 40),
    bridges: fc.constantFrom('automatic', 'none'),
  }),
);

const repeat: fc.Arbitrary<object> = fc.oneof(
  fc.record({ repeat: fc.constant('edge'), length: mm(40, 90), count: fc.integer({ min: 2, max: 5 }) }),
  fc.record({ repeat: fc.constant('ring'), radius: mm(12, 30), count: fc.integer({ min: 3, max: 7 }) }),
);

const knockout: fc.Arbitrary<object> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      kind: fc.constant('figure'),
      on,
      figure,
      turn: fc.constantFrom(undefined, 0, 30, 90, -17.5),
      repeat: fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: repeat }),
      through,
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('thumb-notch'),
      pocket: fc.constantFrom('front pocket', 'back pocket'),
      radius: maybe(mm(5, 16)),
      offset: maybe(fc.record({ down: mm(0, 40) })),
      through: fc.constantFrom(undefined, 'front', 'every-layer'),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('rounded-corners'),
      place: fc.constantFrom('front cover', 'back cover'),
      radius: mm(2, 18),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('ribbon-slots'), on, ribbon: mm(4, 20), through }),
  },
);

/** A spec of a twin sleeve with knockouts, as it comes as JSON. */
export const cutOutSpecs: fc.Arbitrary<Readonly<Record<string, unknown>>> = fc
  .record({
    panel: fc.tuple(fc.integer({ min: 80, max: 110 }), fc.integer({ min: 110, max: 150 })),
    hem: fc.integer({ min: 12, max: 45 }),
    turn: fc.constantFrom('in', 'out'),
    corners: fc.constantFrom('folded', 'mitred'),
    seam: fc.constantFrom('tucked', 'flat'),
    kerf: fc.constantFrom(undefined, undefined, '0.2 mm'),
    sheet: fc.constantFrom('whole', 'trimmed'),
    convention: fc.record(
      {
        sheetLies: fc.constantFrom('inside-up', 'outside-up'),
        userUnit: fc.constantFrom('mm', '1/96 in', '1/72 in'),
        score: fc.constantFrom({ inset: '2 mm' }, { as: 'perforation' }),
        layers: fc.constantFrom({ knockout: { paint: 'fill' } }, { knockout: { colour: '#000000' } }),
      },
      { requiredKeys: [] },
    ),
    knockouts: fc.array(knockout, { minLength: 1, maxLength: 4 }),
  })
  .map(({ panel: [width, height], hem, sheet, kerf, ...rest }) => {
    const [spine, topFlap, overlap] = [12, 50, 14];
    const blank = { width: 2 * (width + hem) + spine, height: 2 * height + overlap };
    return JSON.parse(
      JSON.stringify({
        style: 'twin-sleeve',
        units: 'mm',
        dimensions: { panel: { width, height }, spine, hem, topFlap, overlap },
        hem: { turn: rest.turn },
        corners: rest.corners,
        seam: rest.seam,
        stock: sheet === 'whole' ? blank : { width: blank.width + 60, height: blank.height + 60 },
        prefer: 'least-paper',
        ...(kerf === undefined ? {} : { cutter: { width: 2000, height: 2000, kerf } }),
        convention: rest.convention,
        knockouts: rest.knockouts,
      }),
    );
  });
