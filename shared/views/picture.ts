import type { Side } from '../folding/regions.ts';

/** A point on the page in millimetres, x right, y down. */
export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

/** Which printed side of the sheet shows. */
export type Paper = Side;

/**
 * What a line stands for: `edge` the paper's own edge or a finished fold, `score` a crease that is not folded
 * yet, `seam` where the pockets' fronts meet, `contents` something inside, `valley` and `mountain` the fold to
 * make now, `slip` the edge of what is slipped, `measure` a dimension.
 */
export type LineKind = 'edge' | 'score' | 'seam' | 'contents' | 'valley' | 'mountain' | 'slip' | 'measure';

/** `print` shows where a print's up points; `toward` and `away` which way a part moves; `into` what slides in. */
export type ArrowKind = 'print' | 'toward' | 'away' | 'into';

/** A piece of paper, opaque. */
export interface FaceMark {
  readonly kind: 'face';
  /** Name of the panel. */
  readonly part: string;
  readonly paper: Paper;
  /**
   * Where the open sheet's corner lies if it runs on in this plane, and what lies a millimetre to the right of it and
   * below it on the sheet: a print is laid on by these three. Absent on a swatch.
   */
  readonly sheet?: readonly [corner: PagePoint, right: PagePoint, below: PagePoint];
  readonly outline: readonly PagePoint[];
  /** What is left of it where something is cut out: polygons that are filled by the even-odd rule. */
  readonly left?: readonly (readonly PagePoint[])[];
}

/** Glue or tape between two layers, drawn as if the nearer one were clear. */
export interface GlueMark {
  readonly kind: 'glue';
  readonly outline: readonly PagePoint[];
}

/** Polylines of one kind. */
export interface LineMark {
  readonly kind: 'line';
  readonly line: LineKind;
  readonly lines: readonly (readonly PagePoint[])[];
}

export interface ArrowMark {
  readonly kind: 'arrow';
  readonly arrow: ArrowKind;
  readonly from: PagePoint;
  readonly to: PagePoint;
  /** Control point of a quadratic curve; straight without. */
  readonly by?: PagePoint;
  /** The panel whose print it speaks of, and on which side of the sheet. */
  readonly part?: string;
  readonly paper?: Paper;
}

export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  /** Middle of the line's height; where along the line, the anchor says. */
  readonly at: PagePoint;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  /** Written from bottom to top. */
  readonly upward?: boolean;
  /** On a white plate, to be read over a pattern. */
  readonly plate?: boolean;
}

/** A number where the checks of knockouts found something; the legend says what. */
export interface FindingMark {
  readonly kind: 'finding';
  readonly number: number;
  readonly words: string;
  /** It must not be cut so. */
  readonly refuses: boolean;
  readonly at: PagePoint;
}

/** A named set of marks, so that a reader of the file finds its way. */
export interface GroupMark {
  readonly kind: 'group';
  readonly name: string;
  readonly marks: readonly Mark[];
}

export type Mark = FaceMark | GlueMark | LineMark | ArrowMark | TextMark | FindingMark | GroupMark;

/** A drawing for people, in millimetres from its top left corner; later marks lie over earlier ones. */
export interface Picture {
  /** Name of the view; unique on a page that shows several. */
  readonly name: string;
  readonly title: string;
  /** Says in words what is seen. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** How many times larger it is to be shown; 1 if absent. */
  readonly enlarged?: number;
  readonly marks: readonly Mark[];
}

/** One thing drawn, before it is put on a page. */
export interface Scene {
  readonly name: string;
  /** Lower case words for a view, a sentence for a step. */
  readonly heading: string;
  /** Of a step. */
  readonly number?: number;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Page millimetres for one real millimetre, where that means something. */
  readonly ratio?: number;
}
