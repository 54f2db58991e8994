import type { Picture } from '../views/picture.ts';

/** A line of a label. */
export interface LabelLine {
  /** Begins the line, in bold. */
  readonly lead?: string;
  readonly text: string;
  /** A rule to write on follows. */
  readonly toFillIn?: true;
}

/** A label or card, to be cut out. */
export interface Label {
  readonly heading: string;
  /** Stands between the heading and the lines. */
  readonly picture?: Picture;
  readonly lines: readonly LabelLine[];
}

/** What a class needs in print beside its sheets, as data; a writer gives it a form. */
export interface Labels {
  readonly title: string;
  /** How many kits there are, and cards of each kind. */
  readonly count: number;
  /** One a kit, to stick on its bag. */
  readonly kits: readonly Label[];
  /** To lie in every bag, one of each kind. */
  readonly cards: readonly Label[];
}
