import type { Problem, ProblemError } from './problem.ts';

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** A remedy is a sentence, or data that holds one. */
function remedyText(remedy: unknown): string {
  if (typeof remedy === 'string') return remedy;
  const data = remedy as { readonly message?: unknown; readonly text?: unknown } | null;
  const sentence = data?.message ?? data?.text;
  return typeof sentence === 'string' ? sentence : JSON.stringify(remedy);
}

/** One fault at every place that has it. */
interface Fault {
  readonly paths: readonly string[];
  readonly message: string;
  readonly remedy: string | undefined;
}

/** Faults with the same words and remedy become one; a remedy that is listed for the whole spec is left to that list. */
function gathered(errors: readonly ProblemError[], listed: readonly string[]): readonly Fault[] {
  const faults = new Map<string, Fault>();
  for (const { path, message, remedy } of errors) {
    const own = remedy !== undefined && listed.includes(remedy) ? undefined : remedy;
    const key = JSON.stringify([message, own]);
    const paths = faults.get(key)?.paths ?? [];
    faults.set(key, { paths: paths.includes(path) ? paths : [...paths, path], message, remedy: own });
  }
  return [...faults.values()];
}

function faultText({ paths, message }: Fault): string {
  const places = paths.filter((path) => path !== '');
  return places.length === 0 ? message : `${places.join(', ')}: ${message}`;
}

/** A remedy that the faults of neighbouring lines share stands below the last of them. */
function faultLines(faults: readonly Fault[], isSaid: (fault: Fault) => boolean): readonly string[] {
  return faults.flatMap((fault, index) => [
    ...(isSaid(fault) ? [] : [`  ${faultText(fault)}`]),
    ...(fault.remedy === undefined || fault.remedy === faults[index + 1]?.remedy
      ? []
      : [`    ${fault.remedy}`]),
  ]);
}

/** Our own kinds say their title, and the detail unless a fault says the same; others say the detail, at its place. */
function headingOf({ type, title, detail }: Problem, faults: readonly Fault[]): string {
  const same = faults.find(({ message }) => message === detail);
  if (type === 'about:blank') return same ? faultText(same) : detail;
  return same || (type.endsWith('/invalid-spec') && faults.length > 0) ? title : `${title}: ${detail}`;
}

/**
 * A problem as lines for a terminal: what it is, each fault once with its places, what would help. Ends with a
 * newline.
 */
export function problemText(problem: Problem): string {
  const remedies = [...new Set(listOf(problem.remedies).map(remedyText))];
  const faults = gathered(problem.errors, remedies);
  const heading = headingOf(problem, faults);
  return [
    heading,
    // a plain problem has no title, so its heading may be one of the faults
    ...faultLines(faults, (fault) => problem.type === 'about:blank' && heading.endsWith(faultText(fault))),
    ...(remedies.length > 0 ? ['What would help:', ...remedies.map((remedy) => `  - ${remedy}`)] : []),
    '',
  ].join('\n');
}
