import { describeLength } from '../lengths/show-length.ts';
import type { Plan } from '../solver/plan.ts';
import { styleOf } from '../styles/registry.ts';
import { moveMarks, plainMarks } from './move-marks.ts';
import type { LineKind, Mark } from './picture.ts';
import { textSize, widthOf } from './text-block.ts';

interface Entry {
  readonly words: string;
  readonly sample: readonly Mark[];
}

const sampleWidth = 12;
const sampleHeight = 6;
const gap = 2;
const between = 7;
const middle = sampleHeight / 2;
const rowHeight = sampleHeight + 2;

/** Explains what the marks of a picture use, in rows no wider than a width. */
export function legend(
  marks: readonly Mark[],
  plan: Plan,
  width: number,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const placed: Mark[] = [];
  let [x, y] = [0, 0];
  for (const { words, sample } of entriesFor(marks, plan)) {
    const wide = sampleWidth + gap + widthOf(words, textSize.label);
    if (x > 0 && x + wide > width) [x, y] = [0, y + rowHeight];
    placed.push(...moveMarks(sample, x, y), {
      kind: 'text',
      text: words,
      at: { x: x + sampleWidth + gap, y: y + middle },
      size: textSize.label,
      anchor: 'start',
    });
    x += wide + between;
  }
  return { marks: [{ kind: 'group', name: 'legend', marks: placed }], height: y + sampleHeight };
}

function entriesFor(marks: readonly Mark[], plan: Plan): readonly Entry[] {
  const plain = plainMarks(marks);
  const lines = new Set(plain.flatMap((mark) => (mark.kind === 'line' ? [mark.line] : [])));
  const arrows = new Set(plain.flatMap((mark) => (mark.kind === 'arrow' ? [mark.arrow] : [])));
  const slips = lines.has('slip');
  return [
    ...(['outside', 'inside'] as const).map((paper) => ({
      words: `${paper} face of the sheet`,
      sample: swatch(paper),
    })),
    ...(arrows.has('print') ? [{ words: 'up of the print', sample: printSample }] : []),
    ...lineEntry(lines, 'valley', 'fold toward you'),
    ...lineEntry(lines, 'mountain', 'fold away from you'),
    ...(arrows.has('toward')
      ? [{ words: slips ? 'moves over, toward you' : 'moves toward you', sample: moveSample('toward') }]
      : []),
    ...(arrows.has('away')
      ? [{ words: slips ? 'moves under or behind' : 'moves behind', sample: moveSample('away') }]
      : []),
    ...(arrows.has('into') ? [{ words: 'slides in', sample: slideSample }] : []),
    ...lineEntry(lines, 'slip', 'what is slipped'),
    ...(plain.some(({ kind }) => kind === 'glue')
      ? [{ words: 'glue or tape, between the layers', sample: glueSample }]
      : []),
    ...lineEntry(lines, 'score', 'score, still flat'),
    ...lineEntry(lines, 'seam', 'seam'),
    ...findingEntries(plain),
    ...(lines.has('contents') ? [{ words: contentsWords(plan), sample: lineSample('contents') }] : []),
  ];
}

function findingEntries(marks: ReturnType<typeof plainMarks>): readonly Entry[] {
  const findings = new Map(marks.flatMap((mark) => (mark.kind === 'finding' ? [[mark.number, mark]] : [])));
  return [...findings.values()]
    .toSorted((one, other) => one.number - other.number)
    .map((mark) => ({
      words: mark.refuses ? `${mark.words}: not to be cut` : mark.words,
      sample: [{ ...mark, at: { x: sampleWidth / 2, y: middle } }],
    }));
}

const lineEntry = (lines: ReadonlySet<LineKind>, line: LineKind, words: string): readonly Entry[] =>
  lines.has(line) ? [{ words, sample: lineSample(line) }] : [];

const lineSample = (line: LineKind): readonly Mark[] => [
  {
    kind: 'line',
    line,
    lines: [
      [
        { x: 0, y: middle },
        { x: sampleWidth, y: middle },
      ],
    ],
  },
];

function swatch(paper: 'outside' | 'inside'): readonly Mark[] {
  const outline = [
    { x: 0, y: 0 },
    { x: sampleWidth, y: 0 },
    { x: sampleWidth, y: sampleHeight },
    { x: 0, y: sampleHeight },
  ];
  return [
    { kind: 'face', part: 'legend', paper, outline },
    { kind: 'line', line: 'edge', lines: [[...outline, { x: 0, y: 0 }]] },
  ];
}

const printSample: readonly Mark[] = [
  {
    kind: 'arrow',
    arrow: 'print',
    from: { x: sampleWidth / 2, y: sampleHeight + 0.5 },
    to: { x: sampleWidth / 2, y: -0.5 },
  },
];

const moveSample = (arrow: 'toward' | 'away'): readonly Mark[] => [
  {
    kind: 'arrow',
    arrow,
    from: { x: 0, y: sampleHeight - 1 },
    to: { x: sampleWidth, y: sampleHeight - 1 },
    by: { x: sampleWidth / 2, y: -4 },
  },
];

const slideSample: readonly Mark[] = [
  { kind: 'arrow', arrow: 'into', from: { x: 0, y: middle }, to: { x: sampleWidth, y: middle } },
];

const glueSample: readonly Mark[] = [
  {
    kind: 'glue',
    outline: [
      { x: 0, y: middle - 1 },
      { x: sampleWidth, y: middle - 1 },
      { x: sampleWidth, y: middle + 1 },
      { x: 0, y: middle + 1 },
    ],
  },
];

function contentsWords({ load, arrangement, spec }: Plan): string {
  if (!load) return 'contents';
  const { width, height } = load.item;
  const [across, along] = arrangement.itemTurned ? [height, width] : [width, height];
  const size = `${describeLength(across, spec.measure)} × ${describeLength(along, spec.measure)}`;
  const [only, another] = styleOf(spec).pockets;
  const where = only && !another ? `the ${only.name}` : 'each pocket';
  return `${load.itemName}, ${size}, ${load.perPocket} in ${where}`;
}
