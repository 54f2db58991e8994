import type { Picture } from '../views/picture.ts';

/** A table whose first column names its rows. */
export interface GuideTable {
  readonly kind: 'table';
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A step: what to do, which side of the sheet is up, and what it looks like. */
export interface GuideStep {
  readonly words: string;
  /** Absent once the piece stands. */
  readonly faceUp?: string;
  readonly picture: Picture;
}

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly facts: readonly (readonly [term: string, value: string])[] }
  | GuideTable
  | { readonly kind: 'picture'; readonly picture: Picture; readonly caption: string }
  | { readonly kind: 'steps'; readonly steps: readonly GuideStep[] };

export interface Section {
  /** Unique in the guide; an anchor in HTML. */
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** The maker's sheet: everything to work from, as data; writers give it a form. */
export interface Guide {
  readonly title: string;
  readonly summary: string;
  readonly sections: readonly Section[];
}
