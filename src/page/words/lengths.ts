import type { Language } from './say.ts';

/** A length as the core writes it: `4 in (101.6 mm)`, `101.6 mm (4 in)`, `44 mm`, `≈ 1 3/4 in`. */
export const lengthPattern = String.raw`(?:(?:≈ )?-?\d[\d /]* in\b(?: \(-?[\d.]+ mm\))?|-?[\d.]+ mm\b(?: \((?:≈ )?-?\d[\d /]* in\))?)`;

const inchWords: Readonly<Record<Language, string>> = { en: 'in', de: 'Zoll', fr: 'po', es: 'pulg.' };

const hasComma = (language: Language): boolean => language !== 'en';

/** A number of the core's as a language writes it. */
export const numberIn = (language: Language, number: string): string =>
  hasComma(language) ? number.replace('.', ',') : number;

/** A length of the core's as a language writes it. */
export const lengthIn = (language: Language, length: string): string =>
  numbersIn(language, length).replaceAll(/\bin\b/gu, inchWords[language]);

const numbersIn = (language: Language, text: string): string =>
  hasComma(language) ? text.replaceAll(/(\d)\.(\d)/gu, '$1,$2') : text;

/** What makers type instead of the units that a spec knows. */
const typedUnits: readonly (readonly [RegExp, string])[] = [
  [/(?:zoll|pouces?|po|pulgadas?|pulg|plg)\.?$/iu, 'in'],
  [/millim(?:eters?|etres?|ètres?|etros?|eter)$/iu, 'mm'],
  [/centim(?:eters?|etres?|ètres?|etros?|eter)$/iu, 'cm'],
];

const endsWithNumber = /[\d¼-¾⅐-⅞]\s*$/u;

/**
 * A length as it was typed, as a spec holds it: with a decimal point, a unit that the spec knows, and the page's own
 * unit where none was typed. What is no length stays as it is, for the core to tell what is wrong with it.
 */
export function lengthForSpec(typed: string, unit: 'mm' | 'in'): string {
  const plain = typed.trim().replace(/(\d),(\d)/u, '$1.$2');
  const known = typedUnits.reduce((text, [words, own]) => text.replace(words, own), plain);
  return endsWithNumber.test(known) ? `${known} ${unit}` : known;
}
