import { z } from 'zod';
import { wording } from './wording.ts';

/** Thrown for input that its schema refuses; answered as 400. */
export class InvalidInput extends Error {
  override readonly name = 'InvalidInput';
  readonly error: z.core.$ZodError;
  readonly schema: z.core.$ZodType;
  readonly input: unknown;
  constructor(error: z.core.$ZodError, schema: z.core.$ZodType, input: unknown) {
    super('the input is not valid');
    this.error = error;
    this.schema = schema;
    this.input = input;
  }
}

/**
 * Reads unknown input by a schema, the same way for a request body and for a file on the command line.
 * @throws {InvalidInput} which knows the schema, so that its text can name what is known at each place
 */
export function readWith<Read extends z.core.$ZodType>(schema: Read, input: unknown): z.output<Read> {
  const result = z.safeParse(schema, input, { error: wording });
  if (!result.success) throw new InvalidInput(result.error, schema, input);
  return result.data;
}
