const specEnding = /\.(?:json|ya?ml)$/iu;

/** Hidden files and the drafts, locks and backups that editors and office programs put beside a file. */
const passing = /^[.~#]/u;

/** The name that a spec shares with what is made from it; undefined for a file that is no spec. */
export const baseOf = (file: string): string | undefined =>
  specEnding.test(file) && !passing.test(file) ? file.replace(specEnding, '') : undefined;

const problemEnding = '.problem.txt';

export const drawingName = (base: string): string => `${base}.svg`;
export const problemName = (base: string): string => `${base}${problemEnding}`;

/** The name whose problem a file tells; undefined for any other file. */
export const baseOfProblem = (file: string): string | undefined =>
  file.endsWith(problemEnding) ? file.slice(0, -problemEnding.length) : undefined;

/** Text as it may stand on a terminal, in one line: a file name can hold line ends, escape codes and turns of direction. */
export const inOneLine = (text: string): string =>
  text.replace(/[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu, '\u{fffd}');
