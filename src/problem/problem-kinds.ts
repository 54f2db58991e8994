import { statusPhrase } from './status-phrase.ts';

export interface ProblemKind {
  readonly status: number;
  readonly title: string;
  /** Shown at `/problems/<name>`. */
  readonly explanation: string;
}

/** The problems that are hemfold's own. A plain HTTP error has no entry: its type is `about:blank`. */
export const problemKinds = {
  'invalid-spec': {
    status: 400,
    title: 'The input is not valid',
    explanation: `The body was read as JSON, but something in it is missing, unknown or of the wrong kind.
Each entry of "errors" has a JSON Pointer to the place ("path"), what is wrong there ("message") and,
where one is known, what would mend it ("remedy"). Members that are not known are refused by name, so that
a slip in a name is never taken for a wish that was met. /docs describes every member.`,
  },
  'cannot-be-folded': {
    status: 422,
    title: 'This cannot be made',
    explanation: `The spec was understood, and nothing can be made of it: the sheet is too small, or what it fixes contradicts
itself. "bound" names the limit that cannot be met, "shortfall" says by how much it is missed, and "remedies"
lists the changes that would help, cheapest first. Nothing was made.`,
  },
} as const satisfies Record<string, ProblemKind>;

export type ProblemName = keyof typeof problemKinds;

export const problemNames = Object.freeze(Object.keys(problemKinds) as ProblemName[]);

/** The `type`, `title` and `status` of one of our own problems. */
export function ownKind(name: ProblemName) {
  const { status, title } = problemKinds[name];
  return { type: `/problems/${name}`, title, status };
}

/** The same for a plain HTTP error, whose title is the status phrase (RFC 9457 section 4.2.1). */
export function plainKind(status: number) {
  return { type: 'about:blank', title: statusPhrase(status) ?? 'Error', status };
}
