import { inMm } from '../../shared/lengths/show-length.ts';
import { pointsAlong } from './curve-points.ts';
import { type Drawn, groupNamed, lengthOf, onBlank, sleeveOf } from './drawn.ts';
import {
  blankOf,
  type ExpectedScore,
  expectedOffcuts,
  expectedOutline,
  expectedScores,
  type ScoreLetter,
  stretchesOf,
} from './expected-lines.ts';
import { guideKept } from './guide-rule.ts';
import { overlapsAmong } from './overlaps.ts';
import { type At, everyGroup, type Piece, pathsIn, piecesOf, type ReadPath } from './read-svg.ts';
import type { Rule } from './rule.ts';
import { strokeFault } from './stroke-fault.ts';

/** Positions parse back to the plan within this, in millimetres; three decimals allow no more than half of it. */
const EXACT = 0.001;

const near = (p: At, q: At): boolean => Math.abs(p.x - q.x) < EXACT && Math.abs(p.y - q.y) < EXACT;

const scoreGroups: readonly (readonly [ScoreLetter, 'score-valley' | 'score-mountain'])[] = [
  ['V', 'score-valley'],
  ['M', 'score-mountain'],
];

const show = ([p, q]: Piece | readonly [At, At]): string =>
  [p, q].map(({ x, y }) => `(${x.toFixed(3)}, ${y.toFixed(3)})`).join(' to ');

const first = (faults: readonly string[]): string | undefined => faults[0];

const isPerforated = ({ plan }: Drawn): boolean => plan.spec.convention?.score?.as === 'perforation';

const insetOf = ({ plan }: Drawn): number => inMm(plan.spec.convention?.score?.inset ?? 0);

/** The letters whose scores the convention has drawn. */
const drawnLetters = (drawn: Drawn) => scoreGroups.filter(([, id]) => groupNamed(drawn.read, id));

const rootSize: Rule = {
  name: 'the root is as large as the blank, in real units',
  broken: ({ plan, read }) => {
    const { width, height } = blankOf(sleeveOf(plan));
    const [across, down] = plan.arrangement.drawingTurned ? [height, width] : [width, height];
    const off = Math.max(Math.abs(read.width - across), Math.abs(read.height - down));
    return off < 5e-5 ? undefined : `${read.width} by ${read.height} for ${across} by ${down}`;
  },
};

const scorePositions: Rule = {
  name: 'every score is where the plan has it, and no other is drawn',
  broken: (drawn) => {
    if (isPerforated(drawn)) return undefined;
    const expected = expectedScores(sleeveOf(drawn.plan));
    return first(
      drawnLetters(drawn).flatMap(([letter, id]) =>
        unmatched(
          onBlank(drawn, id),
          expected.filter((score) => score.letter === letter).map((score) => endsOf(score, insetOf(drawn))),
        ),
      ),
    );
  },
};

function endsOf(score: ExpectedScore, inset: number): Piece {
  const stretches = stretchesOf(score, inset);
  const [from, to] = [stretches[0]?.[0], stretches.at(-1)?.[1]];
  if (!from || !to) throw new Error('a score without points');
  return [from, to];
}

function unmatched(drawn: readonly Piece[], expected: readonly Piece[]): string[] {
  const left = [...drawn];
  const faults: string[] = [];
  for (const [from, to] of expected) {
    const found = left.findIndex(
      ([p, q]) => (near(p, from) && near(q, to)) || (near(p, to) && near(q, from)),
    );
    if (found < 0) faults.push(`nothing is drawn from ${show([from, to])}`);
    else left.splice(found, 1);
  }
  return [...faults, ...left.map((piece) => `nothing is planned from ${show(piece)}`)];
}

const cutPositions: Rule = {
  name: 'the outline is cut where it must be, and only there',
  broken: (drawn) => {
    if (!groupNamed(drawn.read, 'cut')) return undefined;
    const sleeve = sleeveOf(drawn.plan);
    const loops = outlineIsCut(drawn) ? [expectedOutline(sleeve)] : expectedOffcuts(sleeve);
    return first(unmatched(onBlank(drawn, 'cut'), loops.flatMap(closed)));
  },
};

const closed = (points: readonly At[]): Piece[] =>
  points.map((p, index) => [p, points[(index + 1) % points.length] ?? p]);

/** A sheet that is larger by half a millimetre at most serves as it is. */
function outlineIsCut({ plan }: Drawn): boolean {
  const { outline = 'auto' } = plan.spec.convention ?? {};
  if (outline !== 'auto') return outline === 'always';
  const { sheet, sheetTurned } = plan.arrangement;
  const [width, height] = sheetTurned ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  return inMm(width - plan.blank.width) > 0.5 || inMm(height - plan.blank.height) > 0.5;
}

const nothingTwice: Rule = {
  name: 'no line lies on another, whole or in part, in any layer',
  broken: ({ read }) => first(overlapsAmong(read.groups.flatMap((group) => piecesOf(pathsIn(group))))),
};

const nothingEmpty: Rule = {
  name: 'no piece has zero length, and no number is none',
  broken: ({ svg, read }) => {
    if (
      /NaN|Infinity|undefined|null|\de[+-]?\d/u.test(svg.replace(/<(title|desc)>[^<]*|#[0-9a-f]{6}/giu, ''))
    )
      return 'a number is none';
    const pieces = read.groups.flatMap((group) => piecesOf(pathsIn(group)));
    const empty = pieces.find((piece) => !(lengthOf(piece) > 0));
    return empty && `nothing from ${show(empty)}`;
  },
};

const withinBlank: Rule = {
  name: 'no score leaves the blank',
  broken: (drawn) => {
    const outline = expectedOutline(sleeveOf(drawn.plan));
    const inside = (p: At): boolean =>
      closed(outline).every(([a, b]) => {
        const cross = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
        return cross / Math.hypot(b.x - a.x, b.y - a.y) > -EXACT;
      });
    const outside = drawnLetters(drawn)
      .flatMap(([, id]) => onBlank(drawn, id))
      .find((piece) => !piece.every(inside));
    return outside && `a score from ${show(outside)}`;
  },
};

const openAndClosed: Rule = {
  name: 'scores are open and not filled, cuts are closed',
  broken: ({ read }) => {
    const paths = (id: string): readonly ReadPath[] =>
      read.groups.filter((g) => g.id === id).flatMap(pathsIn);
    const subpaths = (id: string) => paths(id).flatMap((path) => path.subpaths);
    if (subpaths('score').some((sub) => sub.closed || sub.pieces.length !== 1))
      return 'a score is no single line';
    if (['cut', 'knockout'].some((id) => subpaths(id).some((sub) => !sub.closed))) return 'a cut is open';
    const scored = everyGroup(read.groups).filter(({ id }) => id.startsWith('score-'));
    return scored.every(({ attributes }) => attributes.fill === 'none' && attributes.stroke !== 'none')
      ? undefined
      : 'a score is filled or not stroked';
  },
};

/*
 * Vertical scores: two hems and two spine scores, each as long as the blank is high: 4·blank height.
 * Horizontal scores: two flap folds, each as long as the blank is wide: 2·blank width.
 * Folded corners: four hypotenuses of right triangles with legs h: 4·h·√2; mitred corners have none.
 * Each of the up to twenty ends at the edge loses the inset, or a third of its stretch if that is less.
 */
const totalLength: Rule = {
  name: 'all scores together are as long as the formula says',
  broken: (drawn) => {
    if (isPerforated(drawn) || drawnLetters(drawn).length < 2) return undefined;
    const sleeve = sleeveOf(drawn.plan);
    const { hem: h, topFlap: t, bottomFlap: b } = sleeve;
    const { width, height } = blankOf(sleeve);
    const corners = sleeve.cornersFolded ? 4 * h * Math.SQRT2 : 0;
    const lost = (stretch: number): number => Math.min(insetOf(drawn), stretch / 3);
    const insets =
      4 * lost(t) + 4 * lost(b) + 4 * lost(h) + (sleeve.cornersFolded ? 8 * lost(h * Math.SQRT2) : 0);
    const expected = 4 * height + 2 * width + corners - insets;
    const total = sum(drawnLetters(drawn).flatMap(([, id]) => onBlank(drawn, id).map(lengthOf)));
    return Math.abs(total - expected) < 0.02 ? undefined : `${total} mm instead of ${expected}`;
  },
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/*
 * Valleys: the corners, 4·h·√2 if folded; both flap folds between the hems, 2·(2W + S); both spine scores on
 * the panel row, 2·H; and the hems, 2·blank height, when they turn in.
 * Mountains: both flap folds across both hems, 4·h; both spine scores across both flaps, 2·(t + b); and the
 * hems when they turn out.
 */
const lettersApart: Rule = {
  name: 'valleys and mountains are each as long as the folds make them',
  broken: (drawn) => {
    if (isPerforated(drawn) || insetOf(drawn) > 0) return undefined;
    const {
      width: W,
      height: H,
      spine: S,
      hem: h,
      topFlap: t,
      bottomFlap: b,
      ...sleeve
    } = sleeveOf(drawn.plan);
    const hems = 2 * (t + H + b);
    const corners = sleeve.cornersFolded ? 4 * h * Math.SQRT2 : 0;
    const expected: Readonly<Record<ScoreLetter, number>> = {
      V: corners + 2 * (2 * W + S) + 2 * H + (sleeve.hemsOut ? 0 : hems),
      M: 4 * h + 2 * (t + b) + (sleeve.hemsOut ? hems : 0),
    };
    return first(
      drawnLetters(drawn).flatMap(([letter, id]) => {
        const total = sum(onBlank(drawn, id).map(lengthOf));
        return Math.abs(total - expected[letter]) < 0.02
          ? []
          : [`${letter}: ${total} instead of ${expected[letter]}`];
      }),
    );
  },
};

/*
 * On each stretch of a score between two crossings, or a crossing and the end: the cuts are of the length that
 * was asked for, as many as there is room for with a tie between any two and at least a tie, and 3 mm, at both
 * ends; so that every crossing and every end lies on a tie. Where not even one cut has room, one shorter cut.
 */
const perforations: Rule = {
  name: 'a perforated score has its ties at every crossing and end, and cuts of the length asked for',
  broken: (drawn) => {
    if (!isPerforated(drawn)) return undefined;
    const { cut: ownCut, tie: ownTie } = drawn.plan.spec.convention?.score ?? {};
    const [cut, tie] = [inMm(ownCut ?? 1_500_000), inMm(ownTie ?? 1_500_000)];
    const expected = expectedScores(sleeveOf(drawn.plan));
    return first(
      drawnLetters(drawn).flatMap(([letter, id]) => {
        const left = new Set(onBlank(drawn, id));
        const faults = expected
          .filter((score) => score.letter === letter)
          .flatMap((score) => stretchesOf(score, insetOf(drawn)))
          .flatMap((stretch) => stretchFaults(stretch, left, cut, tie));
        return left.size === 0 ? faults : [...faults, `${left.size} cuts lie on no stretch of a score`];
      }),
    );
  },
};

function stretchFaults([from, to]: readonly [At, At], left: Set<Piece>, cut: number, tie: number): string[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const along = (p: At): number => (p.x - from.x) * ux + (p.y - from.y) * uy;
  const aside = (p: At): number => Math.abs((p.x - from.x) * uy - (p.y - from.y) * ux);
  const cuts: (readonly [number, number])[] = [];
  for (const piece of left) {
    const [p, q] = piece;
    if (aside(p) > EXACT || aside(q) > EXACT) continue;
    const [start, end] = [Math.min(along(p), along(q)), Math.max(along(p), along(q))];
    if (start < -EXACT || end > length + EXACT) continue;
    left.delete(piece);
    cuts.push([start, end]);
  }
  cuts.sort(([one], [other]) => one - other);
  const where = `on ${show([from, to])}`;
  if (cuts.length === 0) return [`no cut ${where}`];
  const lengths = cuts.map(([start, end]) => end - start);
  const ties = [...cuts, [length, length] as const].map(
    ([start], index) => start - (cuts[index - 1]?.[1] ?? 0),
  );
  const slack = 2 * EXACT;
  const end = Math.max(tie, 3);
  if (length < cut + 2 * end - slack) {
    const short = Math.min(cut, length / 3);
    if (cuts.length !== 1 || (lengths[0] ?? 0) > short + slack) return [`a cut of ${lengths[0]} mm ${where}`];
    return Math.min(...ties) > 0 ? [] : [`no tie at the end ${where}`];
  }
  if (lengths.some((one) => Math.abs(one - cut) > slack)) return [`cuts of ${lengths} mm ${where}`];
  if (ties.slice(1, -1).some((one) => Math.abs(one - tie) > slack)) return [`ties of ${ties} mm ${where}`];
  const ends = [ties[0] ?? 0, ties.at(-1) ?? 0];
  if (ends.some((one) => one < end - slack)) return [`a tie of only ${ends} mm at an end ${where}`];
  return sum(ends) - 2 * end > cut + tie + slack ? [`room for another cut ${where}`] : [];
}

/** Okabe & Ito's reddish purple, vermilion and bluish green; line types differ too, since colour alone is not enough. */
const usualLayers = {
  'score-valley': { colour: '#CC79A7', lineType: 'dashed', order: 0 },
  'score-mountain': { colour: '#CC79A7', lineType: 'long-dashed dotted', order: 1 },
  knockout: { colour: '#D55E00', lineType: 'dotted', order: 10 },
  cut: { colour: '#009E73', lineType: 'continuous', order: 20 },
} as const;

/** A layer as the convention has it, by the words of its descriptions. */
function layerOf(drawn: Drawn, id: keyof typeof usualLayers) {
  const layers = drawn.plan.spec.convention?.layers;
  const own =
    id === 'score-valley'
      ? [layers?.score, layers?.scoreValley]
      : id === 'score-mountain'
        ? [layers?.score, layers?.scoreMountain]
        : [layers?.[id]];
  const say = <Key extends 'colour' | 'width' | 'lineType' | 'off' | 'paint'>(key: Key) =>
    own.map((layer) => layer?.[key]).findLast((value) => value !== undefined);
  return {
    off: say('off') ?? false,
    filled: say('paint') === 'fill',
    colour: say('colour') ?? usualLayers[id].colour,
    width: inMm(say('width') ?? 250_000),
    lineType: cutByDashes(drawn, id) ? 'continuous' : (say('lineType') ?? usualLayers[id].lineType),
    order: own.at(-1)?.order ?? usualLayers[id].order,
  };
}

/** A perforation is drawn cut by cut, so its line has no dashes of its own. */
const cutByDashes = (drawn: Drawn, id: string): boolean => id.startsWith('score-') && isPerforated(drawn);

const conventionKept: Rule = {
  name: 'every layer is there in its colour, width, line type and paint, unless it is off',
  broken: (drawn) => {
    const { read } = drawn;
    for (const id of Object.keys(usualLayers) as (keyof typeof usualLayers)[]) {
      const layer = layerOf(drawn, id);
      const group = groupNamed(read, id);
      if (layer.off !== (group === undefined)) return `${id} is ${group ? 'there' : 'not there'}`;
      if (!group) continue;
      const { fill, stroke, 'stroke-width': width, 'stroke-dasharray': dashes, ...more } = group.attributes;
      if (Object.keys(more).length > 0) return `${id} has ${Object.keys(more)}`;
      const [painted, bare] = layer.filled ? [fill, stroke] : [stroke, fill];
      if (painted?.toLowerCase() !== layer.colour.toLowerCase() || bare !== 'none')
        return `${id} is filled ${fill} and stroked ${stroke}`;
      if (layer.filled) continue;
      const unlike = strokeFault(read.scale, { width, dashes }, layer);
      if (unlike) return `${id} ${unlike}`;
    }
    return undefined;
  },
};

const inOrder: Rule = {
  name: 'layers come in the order asked for, both kinds of score within one group',
  broken: (drawn) => {
    const { read, plan } = drawn;
    const scores = read.groups.find(({ id }) => id === 'score');
    const byOrder = (ids: readonly (readonly [string, number])[], there: readonly string[]): boolean => {
      const wanted = ids.toSorted(([, one], [, other]) => one - other).map(([id]) => id);
      return wanted.filter((id) => there.includes(id)).join() === there.join();
    };
    const outer = [
      ['score', plan.spec.convention?.layers?.score?.order ?? 0],
      ['guide', plan.spec.convention?.layers?.guide?.order ?? 5],
      ['knockout', layerOf(drawn, 'knockout').order],
      ['cut', layerOf(drawn, 'cut').order],
    ] as const;
    const inner = (['score-valley', 'score-mountain'] as const).map(
      (id) => [id, layerOf(drawn, id).order] as const,
    );
    if (
      !byOrder(
        outer,
        read.groups.map(({ id }) => id),
      )
    )
      return read.groups.map(({ id }) => id).join();
    if (!byOrder(inner, scores?.groups.map(({ id }) => id) ?? [])) return 'the scores are out of order';
    return undefined;
  },
};

const saysWhat: Rule = {
  name: 'the drawing and every layer say in words what they are',
  broken: ({ read }) => {
    const untitled = everyGroup(read.groups).find(({ title }) => title === '');
    if (untitled) return `${untitled.id} has no title`;
    return read.title !== '' && read.description !== '' ? undefined : 'the drawing says nothing';
  },
};

const withinView: Rule = {
  name: 'nothing is drawn outside the view',
  broken: (drawn) => {
    const { read } = drawn;
    // the last decimal of a position may round outwards, and the root's size has six
    const slack = 0.0005 * read.scale + 5e-5;
    const out = read.groups
      .flatMap((group) => piecesOf(pathsIn(group)))
      .find((piece) =>
        // of a curve what is drawn counts, not its control points
        [...pointsAlong(piece), piece.at(-1) ?? piece[0]].some(
          (p) => p.x < -slack || p.y < -slack || p.x > read.width + slack || p.y > read.height + slack,
        ),
      );
    return out && `a piece from ${show(out)}`;
  },
};

/** The rules of the drawing. */
export const drawingRules: readonly Rule[] = [
  rootSize,
  scorePositions,
  cutPositions,
  nothingTwice,
  nothingEmpty,
  withinBlank,
  withinView,
  openAndClosed,
  totalLength,
  lettersApart,
  perforations,
  conventionKept,
  guideKept,
  inOrder,
  saysWhat,
];
