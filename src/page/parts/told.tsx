import type { Told as ToldText } from '../words/tell.ts';

/** What the core says; where it stayed English, a screen reader reads it so. */
export const Told = ({ told: { text, known } }: { readonly told: ToldText }) =>
  known ? text : <span lang="en">{text}</span>;
