import type { z } from 'zod';
import { nearestName } from '../../shared/spec/nearest-name.ts';

type Issue = z.core.$ZodIssue;

/** An option that wants another kind of value altogether, so it says nothing about what was meant. */
const otherKind = (issues: readonly Issue[]) =>
  issues.some((issue) => issue.code === 'invalid_type' && issue.path.length === 0);

const faults = (issues: readonly Issue[]): number =>
  issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);

const depth = (issues: readonly Issue[]): number =>
  issues.reduce(
    (deepest, issue) =>
      Math.max(
        deepest,
        issue.path.length + (issue.code === 'invalid_union' ? Math.max(0, ...issue.errors.map(depth)) : 0),
      ),
    0,
  );

/** The values of an option that is a fixed word or a choice of them; undefined for other options. */
export function fixedValues(issues: readonly Issue[]): readonly string[] | undefined {
  const [issue] = issues;
  return issues.length === 1 && issue?.code === 'invalid_value' && issue.path.length === 0
    ? issue.values.map(String)
    : undefined;
}

/**
 * Of a union's options the one that was most likely meant: the right kind of value, fewest faults, deepest faults;
 * fixed words only when the input resembles one of them or there is nothing else.
 */
export function likeliest(issue: z.core.$ZodIssueInvalidUnion, input: unknown): number | undefined {
  const isSlip = (words: readonly string[]) => typeof input === 'string' && nearestName(input, words);
  const ranked = issue.errors
    .map((issues, index) => {
      const words = fixedValues(issues);
      return { index, issues, unlike: words !== undefined && !isSlip(words) };
    })
    .filter(({ issues }) => issues.length > 0 && !otherKind(issues))
    .toSorted(
      (a, b) =>
        Number(a.unlike) - Number(b.unlike) ||
        faults(a.issues) - faults(b.issues) ||
        depth(b.issues) - depth(a.issues),
    );
  return ranked[0]?.index;
}
