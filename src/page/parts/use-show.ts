import type { ShownLength } from '../../../shared/lengths/show-length.ts';
import { design, unitsIn } from '../state/design.ts';
import { usePicked } from '../state/store.ts';
import { lengthIn, numberIn } from '../words/lengths.ts';
import { useVoice } from '../words/use-voice.ts';

/** A length stays in one line. */
const inOneLine = (text: string): string => text.replaceAll(' ', '\u00a0');

/** Writes a length in the page's own unit and the reader's language. */
export function useShow(): (length: ShownLength) => string {
  const { language } = useVoice();
  const units = usePicked(design, unitsIn);
  return ({ mm, inch }) =>
    inOneLine(
      units === 'in'
        ? lengthIn(language, `${inch} in`)
        : `${numberIn(language, String(Math.round(mm * 100) / 100))} mm`,
    );
}
