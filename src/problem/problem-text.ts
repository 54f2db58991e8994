import type { Problem, ProblemError } from './problem.ts';

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** A remedy is a sentence, or data that holds one. */
function remedyText(remedy: unknown): string {
  if (typeof remedy === 'string') return remedy;
  const data = remedy as { readonly message?: unknown; readonly text?: unknown } | null;
  const sentence = data?.message ?? data?.text;
  return typeof sentence === 'string' ? sentence : JSON.stringify(remedy);
}

function faultLines({ path, message, remedy }: ProblemError, heading: string): readonly string[] {
  const fault = path === '' ? message : `${path}: ${message}`;
  return [
    ...(heading.endsWith(fault) ? [] : [`  ${fault}`]),
    ...(remedy === undefined ? [] : [`    ${remedy}`]),
  ];
}

/** Our own kinds say their title; the detail follows where the faults do not say the same. */
function headingOf({ type, title, detail, errors }: Problem): string {
  if (type === 'about:blank') return detail;
  return type.endsWith('/invalid-spec') && errors.length > 0 ? title : `${title}: ${detail}`;
}

/** A problem as lines for a terminal: what it is, each fault with its place, what would help. Ends with a newline. */
export function problemText(problem: Problem): string {
  const heading = headingOf(problem);
  const remedies = listOf(problem.remedies).map((remedy) => `  - ${remedyText(remedy)}`);
  return [
    heading,
    ...problem.errors.flatMap((error) => faultLines(error, heading)),
    ...(remedies.length > 0 ? ['What would help:', ...remedies] : []),
    '',
  ].join('\n');
}
