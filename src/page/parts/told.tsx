import type { Told as ToldText } from '../words/tell.ts';

interface ToldProps {
  readonly told: ToldText;
  /** It begins a sentence. */
  readonly begins?: boolean;
}

/** A text as it begins a sentence. */
export const begun = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** What the core says; where it stayed English, a screen reader reads it so. */
export function Told({ told: { text, known }, begins = false }: ToldProps) {
  const shown = begins ? begun(text) : text;
  return known ? shown : <span lang="en">{shown}</span>;
}
