import { useMemo } from 'preact/hooks';
import { manners } from '../state/manners.ts';
import { useStore } from '../state/store.ts';
import { counted, type Language, type Say, speaker, type Values } from './say.ts';
import { type Tell, teller } from './tell.ts';

export interface Voice {
  readonly language: Language;
  /** What the page itself says. */
  readonly say: Say;
  /** The same, by how many there are: `name.one` or `name.other`. */
  readonly sayCount: (name: string, count: number, values?: Values) => string;
  /** What the core says. */
  readonly tell: Tell;
}

/** The page's voice in the reader's language. */
export function useVoice(): Voice {
  const { language, words, phrases } = useStore(manners, 'language', 'words', 'phrases');
  return useMemo(() => {
    const say = speaker(words, language);
    return {
      language,
      say,
      sayCount: (name, count, values) => say(counted(language, name, count), { count, ...values }),
      tell: teller(phrases, language),
    };
  }, [language, words, phrases]);
}
