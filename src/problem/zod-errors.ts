import type { z } from 'zod';
import { jsonPointer } from './json-pointer.ts';
import { knownNames, type Schema, schemasAt, unionOptions } from './known-names.ts';
import { fixedValues, likeliest } from './likeliest-option.ts';
import { quote, useOneOf, useWords } from './name-list.ts';
import type { ProblemError } from './problem.ts';
import { valueAt } from './value-at.ts';
import { nameKind } from './value-words.ts';
import { unnamedUnion } from './wording.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** What was read and by which schema; with it a fault can say what is known at its place. */
export interface Reading {
  readonly schema: Schema;
  readonly input: unknown;
}

/** A reply lists this many faults at most, so that a hostile body cannot ask for a reply larger than itself. */
const mostErrors = 32;

function unknownMember(key: string, path: Path, reading: Reading | undefined): ProblemError {
  const known = reading ? knownNames(reading.schema, reading.input, path) : [];
  return {
    path: jsonPointer([...path, key]),
    message: `${quote(key)} is not known here`,
    remedy: known.length === 0 ? 'leave it out' : useOneOf(key, known),
  };
}

function remedyFor(issue: Issue, input: unknown): string | undefined {
  if (issue.code === 'custom' && typeof issue.params?.remedy === 'string') return issue.params.remedy;
  // a member that this kind of thing never has
  if (issue.code === 'invalid_type' && issue.expected === 'never') return 'leave it out';
  const allowed =
    issue.code === 'invalid_value'
      ? issue.values
      : issue.code === 'invalid_union' && issue.inclusive !== false
        ? issue.options
        : undefined;
  if (!allowed || allowed.length === 0) return undefined;
  const values = allowed.map(String);
  return typeof input === 'string' ? useOneOf(input, values) : useWords(values);
}

function single(issue: Issue, path: Path, reading: Reading | undefined): ProblemError {
  const remedy = remedyFor(issue, reading ? valueAt(reading.input, path) : undefined);
  return {
    path: jsonPointer(path),
    message: issue.message,
    ...(remedy === undefined ? {} : { remedy }),
  };
}

/** Adds the fixed words that would have served as well to the remedy of a lone fault. */
function alsoFixed(
  errors: ProblemError[],
  issue: z.core.$ZodIssueInvalidUnion,
  chosen: number,
): ProblemError[] {
  const words = issue.errors.flatMap((issues, index) =>
    index === chosen ? [] : (fixedValues(issues) ?? []),
  );
  const [error, ...others] = errors;
  if (!error || others.length > 0 || words.length === 0) return errors;
  const use = useWords(words);
  return [{ ...error, remedy: error.remedy === undefined ? use : `${error.remedy}; or ${use}` }];
}

function ofUnion(
  issue: z.core.$ZodIssueInvalidUnion,
  path: Path,
  reading: Reading | undefined,
): ProblemError[] {
  const input = reading ? valueAt(reading.input, path) : undefined;
  const chosen = likeliest(issue, input);
  if (chosen !== undefined) {
    const here = reading ? schemasAt(reading.schema, reading.input, path) : [];
    const option = here.map(unionOptions).find((options) => options.length === issue.errors.length)?.[chosen];
    const inner = option ? { schema: option, input } : undefined;
    const errors = (issue.errors[chosen] ?? []).flatMap((each) => ofIssue(each, path, inner));
    return alsoFixed(errors, issue, chosen);
  }
  if (issue.message !== unnamedUnion || issue.errors.length === 0) return [single(issue, path, reading)];
  const kinds = issue.errors
    .flat()
    .flatMap((each) => (each.code === 'invalid_type' ? [nameKind(each.expected)] : []));
  return [{ path: jsonPointer(path), message: `expected ${[...new Set(kinds)].join(' or ')}` }];
}

/** Paths inside `inner` readings start anew, so the outer path is put in front of what they report. */
function ofIssue(issue: Issue, base: Path, reading: Reading | undefined): ProblemError[] {
  const below = (errors: readonly ProblemError[]) =>
    errors.map((error) => ({ ...error, path: jsonPointer(base) + error.path }));
  switch (issue.code) {
    case 'unrecognized_keys':
      return below(issue.keys.slice(0, mostErrors + 1).map((key) => unknownMember(key, issue.path, reading)));
    case 'invalid_union':
      return below(ofUnion(issue, issue.path, reading));
    case 'invalid_key':
    case 'invalid_element': {
      const inner = issue.issues.flatMap((each) => ofIssue(each, issue.path, undefined));
      return below(inner.length > 0 ? inner : [single(issue, issue.path, reading)]);
    }
    default:
      return below([single(issue, issue.path, reading)]);
  }
}

/**
 * Every fault that zod found as one flat list, in the order of the schema.
 * @param reading makes faults name what is known at their place
 */
export function errorsFromZod(error: z.core.$ZodError, reading?: Reading): readonly ProblemError[] {
  const errors: ProblemError[] = [];
  for (const issue of error.issues) {
    if (errors.length > mostErrors) break;
    errors.push(...ofIssue(issue, [], reading));
  }
  if (errors.length <= mostErrors) return errors;
  return [
    ...errors.slice(0, mostErrors),
    { path: '', message: 'and more faults', remedy: 'mend these first' },
  ];
}
