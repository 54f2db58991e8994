import type { Document, Node, YAMLMap } from 'yaml';
import type { ProblemError } from '../problem/problem.ts';
import { readJson, UnreadableJson } from '../problem/read-json.ts';

/** Thrown for bytes that are not YAML as hemfold reads it; the same problem as for JSON. */
const refuse = (message: string, remedy: string, errors?: readonly ProblemError[]) =>
  new UnreadableJson(message, errors ?? [{ path: '', message, remedy }]);

/** A spec needs none; the bound keeps a short text from growing without end (YAML 1.2.2 section 10 warns of it). */
const mostAliases = 100;

const utf8 = new TextDecoder('utf-8', { fatal: true });

function decode(bytes: Uint8Array): string {
  try {
    return utf8.decode(bytes);
  } catch {
    throw refuse('the text is not valid UTF-8', 'save it as UTF-8');
  }
}

interface Fault {
  /** Offset in the text. */
  readonly at: number;
  readonly message: string;
  readonly remedy: string;
}

const mend = 'mend the text so that it is valid YAML 1.2';

/** Faults that the reader finds, in hemfold's words where its own would not help. */
const wordsFor: Readonly<Record<string, { readonly message: string; readonly remedy: string }>> = {
  BAD_DIRECTIVE: { message: 'this directive is not known', remedy: 'leave the line with % out' },
  BLOCK_AS_IMPLICIT_KEY: {
    message: 'a second colon stands in one line',
    remedy: 'put the text in quotes, or see whether the next line is indented too far',
  },
  MULTIPLE_DOCS: { message: 'a second document starts here', remedy: 'keep one spec in one file' },
  NON_STRING_KEY: { message: 'a name must be text', remedy: mend },
  RESOURCE_EXHAUSTION: {
    message: 'the text is nested far too deep',
    remedy: 'no spec needs that: look for a bracket that was doubled',
  },
  TAB_AS_INDENT: { message: 'a tab indents this line', remedy: 'indent with spaces' },
  TAG_RESOLVE_FAILED: { message: 'a tag with ! is not read here', remedy: 'leave the tag out' },
};

type Yaml = typeof import('yaml');

/** Names that occur twice in one map. Found here, since the reader's own check takes the square of their number. */
function repeatedName({ isScalar }: Yaml, map: YAMLMap): Fault | undefined {
  const names = new Set<unknown>();
  for (const { key } of map.items) {
    if (!isScalar(key)) continue;
    if (names.has(key.value))
      return {
        at: key.range?.[0] ?? 0,
        message: `the name "${key.value}" is given twice`,
        remedy: 'keep one of the two',
      };
    names.add(key.value);
  }
  return undefined;
}

/** What YAML can say and JSON cannot. */
function faultBeyondJson(yaml: Yaml, document: Document<Node>): Fault | undefined {
  let fault: Fault | undefined;
  yaml.visit(document, {
    Map: (_key, map) => {
      fault = repeatedName(yaml, map);
      return fault && yaml.visit.BREAK;
    },
    Scalar: (_key, { value, range }) => {
      if (typeof value !== 'number' || Number.isFinite(value)) return undefined;
      fault = {
        at: range?.[0] ?? 0,
        message: 'this number cannot be held',
        remedy: 'give a number with an end, and a smaller one',
      };
      return yaml.visit.BREAK;
    },
  });
  return fault;
}

function firstFault(yaml: Yaml, document: Document.Parsed): Fault | undefined {
  const found = document.errors[0] ?? document.warnings[0];
  if (!found) return faultBeyondJson(yaml, document);
  const words = wordsFor[found.code];
  return { at: found.pos[0], message: words?.message ?? found.message, remedy: words?.remedy ?? mend };
}

/** Nothing but comments, unlike a null that was written. */
const isEmpty = ({ isScalar }: Yaml, { contents }: Document.Parsed): boolean =>
  contents === null || (isScalar(contents) && contents.value === null && contents.source === '');

/** Anchors and aliases become copies. */
function asJsonText(document: Document.Parsed): string {
  try {
    return JSON.stringify(document.toJS({ maxAliasCount: mostAliases }));
  } catch (error) {
    if (error instanceof ReferenceError && /^Unresolved/.test(error.message))
      throw refuse('an alias with * has no anchor with & before it', 'write the value itself');
    throw refuse('the aliases with * make the text grow without end', 'write the values themselves');
  }
}

/** The checks that JSON and YAML share speak of JSON. */
function readAsJson(text: string): unknown {
  try {
    return readJson(new TextEncoder().encode(text));
  } catch (error) {
    if (!(error instanceof UnreadableJson)) throw error;
    const reword = (words: string) => words.replace('the JSON', 'the YAML');
    throw refuse(
      reword(error.message),
      '',
      error.errors.map((each) => ({ ...each, message: reword(each.message) })),
    );
  }
}

/**
 * Reads a spec as YAML 1.2, core schema, one document, no tags of one's own: to the value that the same spec has as
 * JSON. What only JSON's reader refuses (depth, unsafe names) is refused too.
 * @throws {UnreadableJson} for text that is empty, malformed, nested too deep, or not UTF-8
 */
export async function readYaml(bytes: Uint8Array): Promise<unknown> {
  const text = decode(bytes);
  const yaml = await import('yaml'); // most specs are JSON, and need not wait for it
  const lines = new yaml.LineCounter();
  const document = yaml.parseDocument(text, {
    version: '1.2',
    schema: 'core',
    merge: false,
    resolveKnownTags: false,
    stringKeys: true,
    uniqueKeys: false,
    prettyErrors: false,
    lineCounter: lines,
    logLevel: 'error', // as warnings are taken for faults, none is printed
  });
  const fault = firstFault(yaml, document);
  if (fault) {
    const { line, col } = lines.linePos(fault.at);
    throw refuse(`the YAML is malformed at line ${line}, column ${col}: ${fault.message}`, fault.remedy);
  }
  if (isEmpty(yaml, document)) throw refuse('the YAML is empty', 'write a spec');
  return readAsJson(asJsonText(document));
}
