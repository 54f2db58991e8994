import { z } from 'zod';

/** Grammes in a pound, exactly. Source: NBS announcement, Fed. Reg. 24 F.R. 5348 (1959). */
const GRAMMES_PER_POUND = 453.59237;
const SHEETS_PER_REAM = 500;
const METRES_PER_INCH = 0.0254;

/**
 * The basic size, in inches, in which each US grade is weighed: a ream of 500 such sheets weighs the pounds
 * that the pack names. Sources: PrintWiki, "Grammage" (bond, text, cover, tag); a printer's paper guide,
 * tables A-1 and A-2 (index, bristol).
 */
export const basicSizes = Object.freeze({
  bond: [17, 22],
  writing: [17, 22],
  ledger: [17, 22],
  text: [25, 38],
  book: [25, 38],
  offset: [25, 38],
  cover: [20, 26],
  index: [25.5, 30.5],
  bristol: [22.5, 28.5],
  tag: [24, 36],
  newsprint: [24, 36],
} as const satisfies Record<string, readonly [width: number, height: number]>);

export type PaperGrade = keyof typeof basicSizes;
export const paperGrades = Object.freeze(Object.keys(basicSizes) as PaperGrade[]);

/** A US basis weight, as a schema. The bounds keep nonsense out and are wider than any paper. */
export const basisWeight = z
  .strictObject({
    pounds: z.number().min(1).max(1000).meta({ description: 'Pounds in a ream of 500 basic sheets.' }),
    grade: z.enum(paperGrades).meta({ description: 'The grade that the pack names after the pounds.' }),
  })
  .meta({
    description: 'A US basis weight: 65 lb cover is { "pounds": 65, "grade": "cover" }.',
    examples: [{ pounds: 65, grade: 'cover' }],
  });

export type BasisWeight = z.output<typeof basisWeight>;

/** The grammage, in g/m², of one pound of basis weight in a grade. */
export function grammagePerPound(grade: PaperGrade): number {
  const [width, height] = basicSizes[grade];
  const squareMetres = width * METRES_PER_INCH * height * METRES_PER_INCH;
  return GRAMMES_PER_POUND / SHEETS_PER_REAM / squareMetres;
}

/** A US basis weight as grammage, in g/m². */
export const grammageOf = ({ pounds, grade }: Readonly<BasisWeight>): number =>
  pounds * grammagePerPound(grade);

/** A grammage, in g/m², as pounds of basis weight in a grade. */
export const poundsOf = (grammage: number, grade: PaperGrade): number => grammage / grammagePerPound(grade);
