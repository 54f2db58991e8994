import { en, type WordName, type Words } from './en.ts';

export const languages = ['en', 'de', 'fr', 'es'] as const;
export type Language = (typeof languages)[number];

/** What each language calls itself. */
export const languageNames: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
};

export const isLanguage = (text: string | null | undefined): text is Language =>
  languages.some((each) => each === text);

/** The first of a reader's languages that the page speaks. */
export const preferred = (wanted: readonly string[]): Language =>
  wanted.map((tag) => tag.toLowerCase().split('-')[0]).find(isLanguage) ?? 'en';

export type Values = Readonly<Record<string, string | number>>;

/** A text with its values in place of the names in braces. */
export const filled = (text: string, values: Values = {}): string =>
  text.replaceAll(/\{(\w+)\}/gu, (braces, name: string) => String(values[name] ?? braces));

/** Whether a text goes by that name. */
export const isWordName = (name: string): name is WordName => Object.hasOwn(en, name);

export const counted = (language: Language, name: string, count: number): WordName => {
  const form = new Intl.PluralRules(language).select(count) === 'one' ? 'one' : 'other';
  const found = `${name}.${form}`;
  return isWordName(found) ? found : 'page.failed';
};

/** In French no line begins with a mark that stands apart from its word. */
export const typeset = (language: Language, text: string): string =>
  language === 'fr' ? text.replaceAll(/ (?=[:;?!»])/gu, '\u00a0') : text;

/** Speaks one language. */
export const speaker =
  (words: Words, language: Language) =>
  (name: WordName, values?: Values): string =>
    typeset(language, filled(words[name], values));

export type Say = ReturnType<typeof speaker>;
