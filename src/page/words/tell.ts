import { lengthIn, lengthPattern, numberIn } from './lengths.ts';
import { type Language, typeset } from './say.ts';

/**
 * What the core says, from its English to another language. In braces stand, by the word they begin with: a `length`, a
 * `number`, a `name` that stays as it is, `words` that are told in their turn, a `list` joined by commas and "and",
 * `ways` joined by "or", and `clauses` joined by ", and".
 */
export type Phrases = Readonly<Record<string, string>>;

export interface Told {
  readonly text: string;
  /** It is in the reader's language; otherwise it stayed English. */
  readonly known: boolean;
}

const slotPattern = /\{(length|number|name|words|list|ways|clauses)(\w*)\}/gu;

type SlotKind = 'length' | 'number' | 'name' | 'words' | 'list' | 'ways' | 'clauses';

interface Slot {
  readonly kind: SlotKind;
  readonly name: string;
}

interface Template {
  readonly pattern: RegExp;
  readonly slots: readonly Slot[];
  readonly translation: string;
  /** Letters outside braces: of two templates that fit, the one with more is meant. */
  readonly weight: number;
  /** It says something itself. One that only joins what others say would leave a word of it within English. */
  readonly says: boolean;
}

const sources: Readonly<Record<SlotKind, string>> = {
  length: lengthPattern,
  number: String.raw`-?[\d.]+`,
  name: '.+?',
  words: '.+?',
  list: '.+?',
  ways: '.+?',
  clauses: '.+?',
};

/** What parts the items of a list, but for a name in quotes. */
const betweenItems = /(?:, (?:and )?| and )(?![^“]*”)/u;

const literal = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\/]/gu, String.raw`\$&`);

function templateOf(english: string, translation: string): Template {
  const slots: Slot[] = [];
  let source = '';
  let from = 0;
  for (const match of english.matchAll(slotPattern)) {
    const kind = match[1] as SlotKind;
    source += `${literal(english.slice(from, match.index))}(${sources[kind]})`;
    slots.push({ kind, name: `${match[1]}${match[2]}` });
    from = match.index + match[0].length;
  }
  source += literal(english.slice(from));
  const own = english.replaceAll(slotPattern, '');
  return {
    pattern: new RegExp(`^${source}$`, 'u'),
    slots,
    translation,
    weight: own.length,
    says: (own.match(/\p{L}+/gu) ?? []).length >= fewWords,
  };
}

/** Words that a template has at least, where what it says can stand around something that stayed English. */
const fewWords = 3;

/** A text with a capital where another begins with one. */
const likeStart = (text: string, model: string): string =>
  /^\p{Lu}/u.test(model) ? `${text.charAt(0).toUpperCase()}${text.slice(1)}` : text;

/** Sentences of one text. */
const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?]) (?=\p{Lu})/u);

/** Tells what the core says in a language. */
export function teller(phrases: Phrases, language: Language): (text: string) => Told {
  if (language === 'en') return (text) => ({ text, known: true });
  const exact = new Map(Object.entries(phrases).filter(([english]) => !english.includes('{')));
  const templates = Object.entries(phrases)
    .filter(([english]) => english.includes('{'))
    .map(([english, translation]) => templateOf(english, translation))
    .toSorted((one, other) => other.weight - one.weight);
  const lists = {
    list: new Intl.ListFormat(language, { type: 'conjunction' }),
    clauses: new Intl.ListFormat(language, { type: 'conjunction' }),
    ways: new Intl.ListFormat(language, { type: 'disjunction' }),
  };
  const memory = new Map<string, Told>();

  const tell = (text: string): Told => {
    const remembered = memory.get(text);
    if (remembered) return remembered;
    const anew = tellAnew(text);
    const told = { ...anew, text: typeset(language, anew.text) };
    if (memory.size > 2000) memory.clear();
    memory.set(text, told);
    return told;
  };

  function tellAnew(text: string): Told {
    const whole = tellSentence(text);
    if (whole.known) return { ...whole, text: likeStart(whole.text, text) };
    // a word that begins a sentence
    const lower = `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
    const inside = lower === text ? whole : tellSentence(lower);
    if (inside.known) return { text: likeStart(inside.text, text), known: true };
    const sentences = sentencesOf(text);
    if (sentences.length < 2) return whole;
    const told = sentences.map(tell);
    return { text: told.map((each) => each.text).join(' '), known: told.every((each) => each.known) };
  }

  function tellSentence(text: string): Told {
    const own = exact.get(text);
    if (own !== undefined) return { text: own, known: true };
    if (new RegExp(`^${lengthPattern}$`, 'u').test(text))
      return { text: lengthIn(language, text), known: true };
    let partly: Told | undefined;
    for (const template of templates) {
      const match = template.pattern.exec(text);
      if (!match) continue;
      const told = toldBy(template, match);
      if (told.known) return told;
      if (template.says) partly ??= told;
    }
    return partly ?? { text, known: false };
  }

  function toldBy({ slots, translation }: Template, match: RegExpExecArray): Told {
    const values: Record<string, string> = {};
    let known = true;
    for (const [index, { kind, name }] of slots.entries()) {
      const told = toldAs(kind, match[index + 1] ?? '');
      values[name] = told.text;
      known &&= told.known;
    }
    return { text: translation.replaceAll(/\{(\w+)\}/gu, (_, name: string) => values[name] ?? ''), known };
  }

  function toldAs(kind: SlotKind, text: string): Told {
    switch (kind) {
      case 'length':
        return { text: lengthIn(language, text), known: true };
      case 'number':
        return { text: numberIn(language, text), known: true };
      case 'name':
        return { text, known: true };
      case 'words':
        return tell(text);
      case 'list':
        return joined(text.split(betweenItems), 'list');
      case 'ways':
        return joined(text.split(' or '), 'ways');
      case 'clauses':
        return joined(text.split(', and '), 'clauses');
    }
  }

  function joined(parts: readonly string[], how: keyof typeof lists): Told {
    const told = parts.map(tell);
    return {
      text: lists[how].format(told.map((each) => each.text)),
      known: told.every((each) => each.known),
    };
  }

  return tell;
}

export type Tell = ReturnType<typeof teller>;
