import { tapeLength } from '../creases/glue-length.ts';
import { drawFinished } from '../drawing/draw-folder.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { scoreSideOf } from '../drawing/score-side.ts';
import type { Folded } from '../folding/proof-of.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { type Piece, piecesOf } from '../knockouts/pieces.ts';
import { easilyMeasured } from '../lengths/easily-measured.ts';
import type { Measure } from '../lengths/length-schema.ts';
import type { Nm } from '../lengths/nanometres.ts';
import { describeEstimate, describeLength, inMm } from '../lengths/show-length.ts';
import { cautions } from '../plan-reply/cautions.ts';
import { warningsOf } from '../plan-reply/warnings.ts';
import { type Box, ribbonLength, smallBow, ties } from '../ribbon/ribbon.ts';
import { styleOf } from '../styles/registry.ts';
import { printNote, swappedNote } from '../views/laying.ts';
import { sentence } from '../views/part-names.ts';
import { type StepPicture, type TextPictures, textPictures } from '../views/scene-picture.ts';
import { goesIn } from './goes-in.ts';
import type { Block, Guide, GuideStep, Section } from './guide.ts';
import type { GuideWish } from './guide-query.ts';
import { locksSection } from './locks-section.ts';
import { scoringSection } from './scoring-section.ts';

/** What is said about a design beside its spec. */
export interface AboutDesign {
  readonly title?: string | undefined;
  readonly notes?: string | undefined;
  readonly credit?: string | undefined;
  readonly licence?: string | undefined;
}

/**
 * The maker's sheet for a folder: what to have at hand, where to score and cut, how to fold and glue.
 * @param about what the design's maker says of it
 */
export function guideOf(
  folded: Folded,
  { machine, print, shows }: Pick<GuideWish, 'machine' | 'print' | 'shows'>,
  about: AboutDesign = {},
): Guide {
  const drawing = drawFinished(folded);
  const pictures = textPictures(folded, print);
  const pieces = piecesOf(folded);
  const byHand = machine === 'no';
  return {
    title: about.title ?? `${styleOf(folded.plan.spec).title}: the maker’s sheet`,
    summary: `${styleOf(folded.plan.spec).title}. ${styleOf(folded.plan.spec).summary}`,
    sections: [
      sizesSection(folded),
      needsSection(folded, drawing, pieces, byHand),
      sheetSection(pictures, [...swappedNote(shows), ...printNote(folded.plan)]),
      ...(byHand ? [] : [machineSection(folded)]),
      scoringSection(drawing, folded.plan.spec.measure),
      foldsSection(pictures, pieces),
      ...glueSection(folded),
      ...locksSection(folded),
      tieSection(folded),
      ...warningSection(folded),
      { id: 'safety', title: 'Safety', blocks: [{ kind: 'list', items: cautions }] },
      ...creditSection(about),
    ],
  };
}

function sizesSection({ plan }: Folded): Section {
  const { measure } = plan.spec;
  const size = (width: number, height: number) =>
    `${describeLength(width, measure)} wide, ${describeLength(height, measure)} high`;
  const style = styleOf(plan.spec);
  const flat = style.flat(plan.dimensions, plan.spec);
  const { width, height, thickness } = plan.closed;
  const facts: [string, string][] = [
    [sentence(style.words.ready), `${size(width, height)}, ${describeEstimate(thickness, measure)} thick`],
    [sentence(style.words.flat), size(flat.width, flat.height)],
    ['Cut out of', `${plan.arrangement.sheet.title}`],
    ['Blank', size(plan.blank.width, plan.blank.height)],
  ];
  return { id: 'sizes', title: 'Finished size', blocks: [{ kind: 'facts', facts }] };
}

function needsSection(
  { plan, program }: Folded,
  drawing: Drawing,
  pieces: readonly Piece[],
  byHand: boolean,
): Section {
  const { measure } = plan.spec;
  const glue = program.steps.filter((step) => step.kind === 'glue');
  const tape = easilyMeasured(tapeLength(glue), measure);
  const sheet = plan.arrangement.sheet;
  const cut = plan.wholeSheet
    ? drawing.offcuts.length > 0
      ? `the whole sheet, with ${drawing.offcuts.length} ${drawing.offcuts.length === 1 ? 'piece' : 'pieces'} cut off it`
      : 'the whole sheet: nothing is trimmed'
    : `one blank, ${describeLength(plan.blank.width, measure)} by ${describeLength(plan.blank.height, measure)}`;
  const contents = goesIn(plan);
  return {
    id: 'needs',
    title: 'At hand, and to cut',
    blocks: [
      {
        kind: 'list',
        items: [
          `Paper: ${sheet.title}, ${describeLength(sheet.width, measure)} by ${describeLength(sheet.height, measure)}`,
          `To cut: ${cut}`,
          ...pieces.map((piece) => ofSecondPaper(piece, measure)),
          ...(contents === undefined ? [] : [contents]),
          ...(glue.length > 0 ? [`Tape or glue: about ${describeLength(tape, measure)} in all`] : []),
          byHand
            ? 'Scoring board or metal rule and bone folder, craft knife, cutting mat'
            : 'Cutting machine with a scoring tool or a blade, bone folder',
        ],
      },
    ],
  };
}

function ofSecondPaper({ name, title, shape }: Piece, measure: Measure): string {
  const { left, top, right, bottom } = boundsOf(shape);
  const size = [right - left, bottom - top].map((length) => describeLength(Math.round(length), measure));
  return `From another paper, ${name}: ${title}, ${size.join(' by ')}`;
}

const sheetSection = ({ sheet, legend }: TextPictures, notes: readonly string[]): Section => ({
  id: 'parts',
  title: 'The sheet and its parts',
  blocks: [
    ...notes.map((text) => ({ kind: 'text', text }) as const),
    { kind: 'picture', picture: sheet, caption: sheet.description },
    { kind: 'picture', picture: legend, caption: `${legend.title}.` },
  ],
});

function machineSection({ plan }: Folded): Section {
  const { convention } = plan.spec;
  const up = convention?.sheetLies === 'outside-up' ? 'outside' : 'inside';
  return {
    id: 'machine',
    title: 'On the machine',
    blocks: [
      {
        kind: 'list',
        items: [
          `Lay the sheet with its ${up} face up. ${up === 'outside' ? 'The drawing is mirrored for that.' : ''}`.trim(),
          'Score first, then cut out the knockouts, then the outline.',
          scoreSideOf(convention ?? {}).note,
          'Measure a first piece: the table of scores below tells where each line must be.',
        ],
      },
    ],
  };
}

const guideStep = ({ words, picture, lies }: StepPicture): GuideStep => ({
  words,
  picture,
  ...(lies ? { faceUp: 'Inside face up' } : {}),
});

/** What makers tell those who fold for the first time; common practice. */
const foldingAdvice =
  'Fold each score lightly to and fro before it is creased hard, so that dark prints do not crack white. Crease with the bone folder under a scrap of paper, so that it leaves no shine.';

/** Common practice: later no hand comes between the layers. */
const inlayAdvice =
  'Tape each inlay behind its opening, and each frame around it, once the folds are creased and before anything is glued.';

const foldsSection = ({ steps, done }: TextPictures, pieces: readonly Piece[]): Section => ({
  id: 'folds',
  title: 'Fold by fold',
  blocks: [
    { kind: 'text', text: foldingAdvice },
    ...(pieces.length > 0 ? [{ kind: 'text', text: inlayAdvice } as const] : []),
    { kind: 'steps', steps: steps.map(guideStep) },
    { kind: 'picture', picture: done, caption: 'Done.' },
  ],
});

function glueSection({ plan, program }: Folded): readonly Section[] {
  const { measure } = plan.spec;
  const rows = program.steps.flatMap((step) =>
    step.kind === 'glue'
      ? step.strips.map(({ panel, face, to, left, top, right, bottom }) => [
          step.name,
          `${panel}, ${face} face`,
          to === panel ? 'itself, folded over' : to,
          `${describeLength(right - left, measure)} × ${describeLength(bottom - top, measure)}`,
          `${describeLength(left, measure)} from the left, ${describeLength(top, measure)} from the top`,
        ])
      : [],
  );
  if (rows.length === 0) return [];
  const blocks: Block[] = [
    { kind: 'text', text: 'Places are measured on the open sheet with its inside face up.' },
    {
      kind: 'table',
      caption: 'Where the glue goes',
      head: ['Glue', 'On', 'Sticks to', 'Size', 'Place'],
      rows,
    },
  ];
  return [{ id: 'glue', title: 'Glue', blocks }];
}

const whole = (length: Nm): number => Math.round(inMm(length));

function tieSection({ plan }: Folded): Section {
  const { measure } = plan.spec;
  const box: Box = plan.closed;
  const { loop, tail, ribbon } = smallBow;
  return {
    id: 'ribbon',
    title: 'Ribbon',
    blocks: [
      {
        kind: 'facts',
        facts: ties.map((tie) => [
          sentence(tie),
          describeLength(easilyMeasured(ribbonLength(box, tie), measure), measure),
        ]),
      },
      {
        kind: 'text',
        text: `With a small bow: loops of ${whole(loop)} mm, tails of ${whole(tail)} mm, a ribbon ${whole(ribbon)} mm wide.`,
      },
    ],
  };
}

function warningSection(folded: Folded): readonly Section[] {
  const warnings = warningsOf(folded);
  if (warnings.length === 0) return [];
  return [
    {
      id: 'mind',
      title: 'Mind',
      blocks: [{ kind: 'list', items: warnings.map(({ message }) => sentence(message)) }],
    },
  ];
}

function creditSection({ notes, credit, licence }: AboutDesign): readonly Section[] {
  const facts: [string, string][] = [
    ...(credit === undefined ? [] : [['Credit', credit] as [string, string]]),
    ...(licence === undefined ? [] : [['Licence', licence] as [string, string]]),
  ];
  const blocks: Block[] = [
    ...(notes === undefined ? [] : notes.split(/\n+/u).map((text): Block => ({ kind: 'text', text }))),
    ...(facts.length === 0 ? [] : [{ kind: 'facts', facts } as const]),
  ];
  return blocks.length === 0 ? [] : [{ id: 'credit', title: 'From its maker', blocks }];
}
