import { z } from 'zod';
import { commonShape } from '../../../shared/spec/common.ts';
import { styleSpecs, styles } from '../../../shared/styles/registry.ts';

/** A choice that a style leaves to its maker. */
export interface StyleChoice {
  /** JSON Pointer into the spec. */
  readonly path: string;
  readonly options: readonly string[];
  /** What holds where nothing is chosen. */
  readonly usual: string;
}

/** A length that a maker may fix. */
export interface StyleLength {
  readonly path: string;
  readonly title: string;
}

/** What a style is made for: what goes in, a card that it is as large as, or nothing. */
export type MadeFor = 'contents' | 'card' | 'nothing';

/** What can be chosen of one style. */
export interface StyleForm {
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  readonly madeFor: MadeFor;
  /** JSON Pointers of whole numbers. */
  readonly counts: readonly string[];
  readonly choices: readonly StyleChoice[];
  readonly lengths: readonly StyleLength[];
}

type Shape = Readonly<Record<string, z.core.$ZodType>>;

/** The members of the object that a schema reads, whatever it does with them. */
function shapeOf(schema: z.core.$ZodType): Shape | undefined {
  if (schema instanceof z.ZodPipe) return shapeOf(schema.in);
  if (schema instanceof z.ZodOptional) return shapeOf(schema.unwrap());
  return schema instanceof z.ZodObject ? (schema.shape as Shape) : undefined;
}

const inner = (schema: z.core.$ZodType): z.core.$ZodType =>
  schema instanceof z.ZodOptional ? inner(schema.unwrap()) : schema;

function choicesIn(schema: z.core.$ZodType, path: string): StyleChoice[] {
  const plain = inner(schema);
  if (plain instanceof z.ZodEnum) {
    const options = plain.options.map(String);
    // every style names first what is usual; `tests/page/style-form.test.ts` holds them to it
    return [{ path, options, usual: options[0] ?? '' }];
  }
  return Object.entries(shapeOf(plain) ?? {}).flatMap(([name, member]) =>
    choicesIn(member, `${path}/${name}`),
  );
}

/** Every path in an object that leads to no object. */
function leaves(schema: z.core.$ZodType | undefined, path: string): string[] {
  const shape = schema && shapeOf(schema);
  return shape
    ? Object.entries(shape).flatMap(([name, member]) => leaves(member, `${path}/${name}`))
    : [path];
}

/** Whole numbers in what a style alone has. */
function countsIn(schema: z.core.$ZodType, path: string): string[] {
  const plain = inner(schema);
  if (plain instanceof z.ZodNumber) return [path];
  return Object.entries(shapeOf(plain) ?? {}).flatMap(([name, member]) =>
    countsIn(member, `${path}/${name}`),
  );
}

const shapes: readonly (Shape | undefined)[] = styleSpecs.map(shapeOf);

const shapeOfStyle = (style: unknown): Shape =>
  shapes.find((each) => (each?.style as z.ZodLiteral | undefined)?.values.has(style as string)) ?? {};

function madeForIn({ contents, card }: Shape): MadeFor {
  if (contents && !(inner(contents) instanceof z.ZodNever)) return 'contents';
  return card ? 'card' : 'nothing';
}

/** What a style is made for, by its name. */
export const madeFor = (style: unknown): MadeFor => madeForIn(shapeOfStyle(style));

const common = new Set(['style', 'units', 'dimensions', 'card', ...Object.keys(commonShape)]);

/** The ways of folding with what each leaves open, from their own schemas. */
export const styleForms = (): readonly StyleForm[] =>
  styles.map(({ name, title, summary, dimensionNames }) => {
    const shape = shapeOfStyle(name);
    const settable = new Set(shape.dimensions ? leaves(shape.dimensions, '/dimensions') : []);
    const own = Object.entries(shape).filter(([member]) => !common.has(member));
    return {
      name,
      title,
      summary,
      madeFor: madeForIn(shape),
      counts: own.flatMap(([member, schema]) => countsIn(schema, `/${member}`)),
      choices: own.flatMap(([member, schema]) => choicesIn(schema, `/${member}`)),
      lengths: dimensionNames
        .map((dimension) => ({
          path: `/dimensions/${dimension.name.replaceAll('.', '/')}`,
          title: dimension.title,
        }))
        .filter(({ path }) => settable.has(path)),
    };
  });
