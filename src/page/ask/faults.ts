import type { z } from 'zod';
import type { Fault } from './answer.ts';

type Issue = z.core.$ZodIssue;

/** A path as a JSON Pointer (RFC 6901). */
export const pointerOf = (path: readonly PropertyKey[]): string =>
  path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** Of several ways to read a value, the one that came furthest is the one that was meant. */
function likeliest(options: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (issues: readonly Issue[]) => Math.min(...issues.map(({ path }) => path.length));
  return options.toSorted((one, other) => depth(other) - depth(one) || one.length - other.length)[0] ?? [];
}

function faultsIn(issue: Issue, above: readonly PropertyKey[]): Fault[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'invalid_union') {
    const inner = likeliest(issue.errors);
    if (inner.length > 0) return inner.flatMap((each) => faultsIn(each, path));
  }
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      path: pointerOf([...path, key]),
      message: 'this version does not know it',
    }));
  const remedy: unknown = issue.code === 'custom' ? issue.params?.remedy : undefined;
  return [
    {
      path: pointerOf(path),
      message: issue.message,
      ...(typeof remedy === 'string' ? { remedy } : {}),
    },
  ];
}

/** Why a spec could not be read, one fault for each value. */
export const faultsOf = ({ issues }: z.core.$ZodError): readonly Fault[] =>
  issues.flatMap((issue) => faultsIn(issue, []));
