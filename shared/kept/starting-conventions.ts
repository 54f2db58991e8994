/** A convention to begin with, as plain JSON that a spec may hold. */
export interface StartingConvention {
  readonly name: string;
  /** What it is for. */
  readonly description: string;
  readonly convention: Readonly<Record<string, unknown>>;
}

const black = '#000000';
const hairline = '0.1 mm';

const inBlack = (lineType: string) => ({ colour: black, width: hairline, lineType });

/** Conventions to begin with, named by what they do: use one by its name, or keep a changed copy of your own. */
export const startingConventions: readonly StartingConvention[] = Object.freeze([
  {
    name: 'millimetres',
    description: 'Width and height in millimetres, and one unit inside the drawing is a millimetre.',
    convention: { rootUnit: 'mm', userUnit: 'mm' },
  },
  {
    name: 'inches',
    description:
      'Width and height in inches, and 96 units inside the drawing are an inch, as in CSS: for programs that ignore one or the other.',
    convention: { rootUnit: 'in', userUnit: '1/96 in' },
  },
  {
    name: 'points',
    description:
      'Width and height in inches, and 72 units inside the drawing are an inch: for programs that count in points.',
    convention: { rootUnit: 'in', userUnit: '1/72 in' },
  },
  {
    name: 'one colour, line types',
    description: 'Everything in thin black lines; the line type alone says what is scored and what is cut.',
    convention: {
      layers: {
        scoreValley: inBlack('dashed'),
        scoreMountain: inBlack('long-dashed dotted'),
        knockout: inBlack('dotted'),
        cut: inBlack('continuous'),
      },
    },
  },
  {
    name: 'filled shapes',
    description:
      'Cuts and knockouts are filled shapes without an outline; the blank’s outline is always there.',
    convention: {
      outline: 'always',
      layers: { knockout: { paint: 'fill', colour: '#FFFFFF' }, cut: { paint: 'fill', order: 0 } },
    },
  },
  {
    name: 'perforated scores',
    description:
      'For a machine without a scoring tool: scores are perforations, half cut and half tie, that stop short of the edge.',
    convention: { score: { as: 'perforation', cut: '1.5 mm', tie: '1.5 mm', inset: '3 mm' } },
  },
  {
    name: 'outside up',
    description: 'The whole drawing mirrored, for a sheet that lies on the machine with its outside face up.',
    convention: { sheetLies: 'outside-up' },
  },
  {
    name: 'glue shown',
    description:
      'The guide shows where glue goes and what it must stay clear of. It is never cut: draw it with a pen, or hide it.',
    convention: { layers: { guide: {} } },
  },
]);

/** The starting convention of that name. */
export const startingConvention = (name: string): StartingConvention | undefined =>
  startingConventions.find((each) => each.name === name);
