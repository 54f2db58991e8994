import type { At } from './read-svg.ts';

/*
 * What a twin sleeve's drawing must hold, written down from the way it is folded and not from the program
 * that folds it. Millimetres on the blank, inside face up, x right, y down.
 *
 * With the inside face up a fold toward the viewer is a valley. The corners come first and fold toward: V.
 * The hems run the whole height of the blank; they turn under (M) when they show outside and over (V) when
 * they hide inside. Then the flaps fold toward: V on the panels between the hems; but where a flap crosses a
 * hem, the hem lies turned over by then, so that on the flat sheet the same fold is an M, whichever way the
 * hem was turned. Last the spine folds toward, through three layers: the panel row lies as it lay, V; both
 * flaps lie turned over on it, M.
 */

export interface Sleeve {
  readonly width: number;
  readonly height: number;
  readonly spine: number;
  readonly hem: number;
  readonly topFlap: number;
  readonly bottomFlap: number;
  readonly cornersFolded: boolean;
  readonly hemsOut: boolean;
}

export type ScoreLetter = 'V' | 'M';

/** One score, with the points on it where other scores cross or meet it; whether each end is at the paper's edge. */
export interface ExpectedScore {
  readonly letter: ScoreLetter;
  readonly points: readonly At[];
  readonly atEdge: readonly [boolean, boolean];
}

export const blankOf = ({ width, height, spine, hem, topFlap, bottomFlap }: Sleeve) => ({
  width: 2 * width + spine + 2 * hem,
  height: topFlap + height + bottomFlap,
});

/** Every score of the sleeve. */
export function expectedScores(sleeve: Sleeve): readonly ExpectedScore[] {
  const { hem, topFlap, cornersFolded, hemsOut } = sleeve;
  const { width, height } = blankOf(sleeve);
  const rows = [0, topFlap, topFlap + sleeve.height, height];
  const spines = [hem + sleeve.width, hem + sleeve.width + sleeve.spine];
  const line = (
    letter: ScoreLetter,
    points: readonly (readonly [number, number])[],
    first = false,
    last = false,
  ) => ({
    letter,
    points: points.map(([x, y]) => ({ x, y })),
    atEdge: [first, last] as const,
  });
  const corner = (x: number, y: number): ExpectedScore =>
    line(
      'V',
      [
        [Math.abs(x - hem), y],
        [x, Math.abs(y - hem)],
      ],
      true,
      true,
    );
  const [, fold, otherFold] = rows;
  return [
    ...(cornersFolded ? [corner(0, 0), corner(width, 0), corner(0, height), corner(width, height)] : []),
    ...[hem, width - hem].map((x) =>
      line(
        hemsOut ? 'M' : 'V',
        rows.map((y) => [x, y]),
        true,
        true,
      ),
    ),
    ...[fold ?? 0, otherFold ?? 0].flatMap((y) => [
      line(
        'M',
        [
          [0, y],
          [hem, y],
        ],
        true,
        false,
      ),
      line(
        'V',
        [hem, ...spines, width - hem].map((x) => [x, y]),
      ),
      line(
        'M',
        [
          [width - hem, y],
          [width, y],
        ],
        false,
        true,
      ),
    ]),
    ...spines.flatMap((x) => [
      line(
        'M',
        [
          [x, 0],
          [x, fold ?? 0],
        ],
        true,
        false,
      ),
      line('V', [
        [x, fold ?? 0],
        [x, otherFold ?? 0],
      ]),
      line(
        'M',
        [
          [x, otherFold ?? 0],
          [x, height],
        ],
        false,
        true,
      ),
    ]),
  ];
}

/** Corners of the outline: a rectangle, or an octagon where the corners are cut away. */
export function expectedOutline(sleeve: Sleeve): readonly At[] {
  const { width, height } = blankOf(sleeve);
  const h = sleeve.cornersFolded ? 0 : sleeve.hem;
  const points = [
    [h, 0],
    [width - h, 0],
    [width, h],
    [width, height - h],
    [width - h, height],
    [h, height],
    [0, height - h],
    [0, h],
  ].map(([x = 0, y = 0]) => ({ x, y }));
  return points.filter((p, index) => {
    const before = points.at(index - 1);
    return before === undefined || before.x !== p.x || before.y !== p.y;
  });
}

/** The triangles that mitring takes off; none where the corners are folded. */
export function expectedOffcuts(sleeve: Sleeve): readonly (readonly At[])[] {
  if (sleeve.cornersFolded) return [];
  const { width, height } = blankOf(sleeve);
  const { hem } = sleeve;
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ].map(([x = 0, y = 0]) => [
    { x, y },
    { x: Math.abs(x - hem), y },
    { x, y: Math.abs(y - hem) },
  ]);
}

/** A score in its stretches between neighbouring points, with its ends at the paper's edge drawn back. */
export function stretchesOf(
  { points, atEdge }: ExpectedScore,
  inset: number,
): readonly (readonly [At, At])[] {
  const last = points.length - 2;
  return points.slice(1).flatMap((to, index) => {
    const from = points[index];
    if (!from) return [];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    // never more than a third of the stretch, so that no score vanishes
    const back = Math.min(inset / length, 1 / 3);
    const between = (share: number): At => ({
      x: from.x + share * (to.x - from.x),
      y: from.y + share * (to.y - from.y),
    });
    return [
      [
        between(index === 0 && atEdge[0] ? back : 0),
        between(index === last && atEdge[1] ? 1 - back : 1),
      ] as const,
    ];
  });
}
