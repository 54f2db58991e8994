/** Where a JSON text goes wrong: line and column count from 1. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

const tokens = {
  space: /[\t\n\r ]*/y,
  string: /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*"/uy,
  number: /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y,
  word: /true|false|null/y,
} as const;

type Wanted = 'value' | 'value or ]' | 'name' | 'name or }' | ':' | ', or ]' | ', or }' | 'the end';

const wantedText: Readonly<Record<Wanted, string>> = {
  value: 'a value',
  'value or ]': 'a value or ]',
  name: 'a name in double quotes',
  'name or }': 'a name in double quotes, or }',
  ':': 'a colon',
  ', or ]': 'a comma or ]',
  ', or }': 'a comma or }',
  'the end': 'the end of the text',
};

const wordThere = /[A-Za-z_$][\w$]*/y;

/** A hint for the slips that JSON texts typed by hand have most. */
function hintAt(text: string, at: number, wanted: Wanted): string {
  if (at >= text.length) return ', but the text ends';
  wordThere.lastIndex = at;
  const word = wordThere.exec(text)?.[0];
  if (word === 'NaN' || word === 'Infinity') return `; JSON has no ${word}`;
  if (word !== undefined) return `, not ${word.slice(0, 20)}`;
  const sign = text[at];
  if (sign === "'") return '; JSON quotes with " only';
  if (sign === '"')
    return wanted.startsWith('value') ? '; this text in quotes is not closed, or holds a bad escape' : '';
  if (sign === '/' || sign === '#') return '; JSON has no comments';
  if ((sign === ']' || sign === '}') && (wanted === 'value' || wanted === 'name'))
    return '; JSON has no comma after the last entry';
  return '';
}

/** Finds the first fault of a JSON text (RFC 8259), without recursion; undefined when there is none. */
export function findJsonFault(text: string): JsonFault | undefined {
  const open: ('[' | '{')[] = [];
  let wanted: Wanted = 'value';
  let at = 0;

  const take = (token: RegExp): boolean => {
    token.lastIndex = at;
    const found = token.exec(text);
    if (found) at += found[0].length;
    return found !== null;
  };
  const takeSign = (signs: string): string | undefined => {
    const sign = text[at];
    if (sign === undefined || !signs.includes(sign)) return undefined;
    at += 1;
    return sign;
  };
  const afterValue = (): Wanted => {
    const inside = open.at(-1);
    return inside === undefined ? 'the end' : inside === '[' ? ', or ]' : ', or }';
  };
  const close = (): Wanted => {
    open.pop();
    return afterValue();
  };
  const value = (): Wanted | undefined => {
    const sign = takeSign('[{');
    if (sign === '[' || sign === '{') {
      open.push(sign);
      return sign === '[' ? 'value or ]' : 'name or }';
    }
    return take(tokens.string) || take(tokens.number) || take(tokens.word) ? afterValue() : undefined;
  };
  const next: Readonly<Record<Wanted, () => Wanted | undefined>> = {
    value,
    'value or ]': () => (takeSign(']') ? close() : value()),
    name: () => (take(tokens.string) ? ':' : undefined),
    'name or }': () => (takeSign('}') ? close() : take(tokens.string) ? ':' : undefined),
    ':': () => (takeSign(':') ? 'value' : undefined),
    ', or ]': () => (takeSign(',') ? 'value' : takeSign(']') ? close() : undefined),
    ', or }': () => (takeSign(',') ? 'name' : takeSign('}') ? close() : undefined),
    'the end': () => undefined,
  };

  for (;;) {
    take(tokens.space);
    if (wanted === 'the end' && at >= text.length) return undefined;
    const then = next[wanted]();
    if (then === undefined) {
      const before = text.slice(0, at).split('\n');
      return {
        line: before.length,
        column: (before.at(-1) ?? '').length + 1,
        message: `expected ${wantedText[wanted]}${hintAt(text, at, wanted)}`,
      };
    }
    wanted = then;
  }
}
