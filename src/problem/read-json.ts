import { findJsonFault } from './json-fault.ts';
import { jsonPointer } from './json-pointer.ts';
import type { ProblemError } from './problem.ts';

/** Deeper than any spec; it keeps whatever walks the value away from the end of its stack. */
const deepestNesting = 64;

/** Names that would reach an object's prototype if a later step copied them. */
const unsafeNames = new Set(['__proto__']);

/** Thrown for bytes that are not JSON as this service reads it; answered as 400. */
export class UnreadableJson extends Error {
  override readonly name = 'UnreadableJson';
  readonly errors: readonly ProblemError[];
  constructor(message: string, errors: readonly ProblemError[]) {
    super(message);
    this.errors = errors;
  }
}

const refuse = (path: readonly PropertyKey[], message: string, remedy: string) =>
  new UnreadableJson(message, [{ path: jsonPointer(path), message, remedy }]);

/** Walks the value level by level rather than by recursion. */
function refuseUnsafe(value: unknown): void {
  let level: { value: object; path: readonly PropertyKey[] }[] = [];
  const enter = (to: typeof level, child: unknown, path: readonly PropertyKey[]) => {
    if (typeof child === 'object' && child !== null) to.push({ value: child, path });
  };
  enter(level, value, []);
  for (let depth = 0; level.length > 0; depth++) {
    if (depth >= deepestNesting)
      throw refuse(
        level[0]?.path ?? [],
        `the JSON is nested more than ${deepestNesting} deep`,
        'no spec needs that: look for a bracket that was doubled',
      );
    const below: typeof level = [];
    for (const { value: parent, path } of level)
      for (const [key, child] of Object.entries(parent)) {
        if (unsafeNames.has(key))
          throw refuse([...path, key], `the name "${key}" is not allowed`, 'leave it out');
        if (typeof child === 'number' && !Number.isFinite(child))
          throw refuse([...path, key], 'the number is too large to hold', 'give a smaller number');
        enter(below, child, [...path, key]);
      }
    level = below;
  }
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

function decode(bytes: Uint8Array): string {
  try {
    return utf8.decode(bytes);
  } catch {
    throw refuse([], 'the text is not valid UTF-8', 'save or send it as UTF-8 (RFC 8259 section 8.1)');
  }
}

/**
 * Reads JSON from bytes, for a request body and for a file on the command line.
 * @throws {UnreadableJson} for text that is empty, malformed, nested too deep, or not UTF-8
 */
export function readJson(bytes: Uint8Array): unknown {
  const text = decode(bytes);
  if (text.trim() === '') throw refuse([], 'the JSON is empty', 'send a JSON object');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const fault = findJsonFault(text);
    const place = fault ? ` at line ${fault.line}, column ${fault.column}: ${fault.message}` : '';
    throw refuse([], `the JSON is malformed${place}`, 'mend the text so that it is valid JSON (RFC 8259)');
  }
  refuseUnsafe(value);
  return value;
}
