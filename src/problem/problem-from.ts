import { z } from 'zod';
import { BodyTooLarge, StoreUnavailable, UnstorableName } from '../store/store-errors.ts';
import { CannotBeFolded } from './cannot-be-folded.ts';
import { HttpProblem } from './http-problem.ts';
import type { Problem, ProblemError } from './problem.ts';
import { ownKind, plainKind } from './problem-kinds.ts';
import { UnreadableJson } from './read-json.ts';
import { InvalidInput } from './read-with.ts';
import { errorsFromZod, type Reading } from './zod-errors.ts';

const oneSentence = ({ path, message }: ProblemError) => (path === '' ? message : `${path}: ${message}`);

function summary(errors: readonly ProblemError[]): string {
  const [first] = errors;
  if (!first) return 'The input is not valid.';
  return errors.length === 1
    ? oneSentence(first)
    : `${errors.length} faults; the first is at ${oneSentence(first)}`;
}

/**
 * The problem for a spec that its schema refuses.
 * @param reading what was read and by which schema, so that faults can name what is known at their place
 */
export function problemFromZod(error: z.core.$ZodError, reading?: Reading): Problem {
  const errors = errorsFromZod(error, reading);
  return { ...ownKind('invalid-spec'), detail: summary(errors), errors };
}

export function problemFromRefusal({ message, errors, ...rest }: CannotBeFolded['refusal']): Problem {
  return { ...ownKind('cannot-be-folded'), detail: message, errors, ...rest };
}

export const plainProblem = (
  status: number,
  detail: string,
  errors: readonly ProblemError[] = [],
): Problem => ({
  ...plainKind(status),
  detail,
  errors,
});

/** The problem for an error that speaks of the caller's input; undefined for every other error. */
export function problemFromInput(error: unknown): Problem | undefined {
  if (error instanceof CannotBeFolded) return problemFromRefusal(error.refusal);
  if (error instanceof InvalidInput) return problemFromZod(error.error, error);
  if (error instanceof z.core.$ZodError) return problemFromZod(error);
  if (error instanceof UnreadableJson) return plainProblem(400, error.message, error.errors);
  if (error instanceof StoreUnavailable) return plainProblem(503, error.message);
  if (error instanceof BodyTooLarge) return plainProblem(413, `${error.message}, so nothing was stored.`);
  if (error instanceof UnstorableName) return plainProblem(400, error.message);
  if (error instanceof HttpProblem) return plainProblem(error.statusCode, error.message, error.errors);
  return undefined;
}
