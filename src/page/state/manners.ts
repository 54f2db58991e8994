import { en, type Words } from '../words/en.ts';
import { isLanguage, type Language, languages, preferred } from '../words/say.ts';
import type { Phrases } from '../words/tell.ts';
import { storeOf } from './store.ts';

/** How the page speaks and looks, kept in the reader's own browser. */
export interface Manners {
  readonly language: Language;
  readonly words: Words;
  /** What the core says. */
  readonly phrases: Phrases;
  readonly look: Look;
}

export const looks = ['auto', 'light', 'dark'] as const;
export type Look = (typeof looks)[number];

const isLook = (text: string | null): text is Look => looks.some((each) => each === text);

/** Browsers may refuse to keep anything. */
function remembered(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function remember(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // then it holds until the page is closed
  }
}

interface Speech {
  readonly words: Words;
  readonly phrases: Phrases;
}

const english: Speech = { words: en, phrases: {} };

const loaders: Readonly<Record<Language, () => Promise<Speech>>> = {
  en: async () => english,
  de: () => import('../words/de.ts'),
  fr: () => import('../words/fr.ts'),
  es: () => import('../words/es.ts'),
};

const languageKey = 'hemfold-language';
const lookKey = 'hemfold-look';

const ownLook = remembered(lookKey);

export const manners = storeOf<Manners>({
  language: 'en',
  ...english,
  look: isLook(ownLook) ? ownLook : 'auto',
});

let wanted: Language = 'en';

/** Speaks a language from now on; where its words cannot be loaded, as offline, it stays as it is. */
export async function speak(language: Language): Promise<void> {
  wanted = language;
  const speech = await loaders[language]().catch(() => undefined);
  // whoever has chosen another one meanwhile wants that
  if (!speech || wanted !== language) return;
  remember(languageKey, language);
  document.documentElement.lang = language;
  manners.set({ language, words: speech.words, phrases: speech.phrases });
}

export function lookLike(look: Look): void {
  remember(lookKey, look);
  showLook(look);
  manners.set({ look });
}

function showLook(look: Look): void {
  if (look === 'auto') delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = look;
}

/** The language of last time, or the one that the browser asks for. */
export async function beginManners(): Promise<void> {
  showLook(manners.get().look);
  const own = remembered(languageKey);
  await speak(isLanguage(own) ? own : preferred([...navigator.languages, ...languages]));
}
