/** A side of something upright, as its inside is seen. */
export type PaperSide = 'left' | 'right' | 'top' | 'bottom';

/**
 * What ends a pocket at a side: a `fold` between its back and its front, a `tab` that is folded from one and glued to
 * the other, or `glue` between the two.
 */
export interface ClosedSide {
  readonly side: PaperSide;
  readonly by: 'fold' | 'tab' | 'glue';
}

/** Where paper stands when the piece is set up: at a side of the panel, or over it. */
export type Wall = PaperSide | 'over';

/** Where a style keeps things: the contents go between the panels behind and the panels in front. */
export interface PocketPlace {
  readonly name: string;
  /** The panel behind the contents, whose folded width is the pocket's. */
  readonly panel: string;
  /** Panels that lie behind the contents besides that one. */
  readonly behind: readonly string[];
  readonly front: readonly string[];
  /** The side of the flat form at which the contents slide in. */
  readonly mouth: PaperSide;
  /** Default: folds above and below, as where a flap runs on at the side across from the mouth. */
  readonly closed?: readonly ClosedSide[];
  /**
   * For contents that lie on the panel within a piece that is set up, and not between its flat layers: where paper
   * stands around them.
   */
  readonly walls?: readonly Wall[];
}

const usuallyClosed: readonly ClosedSide[] = [
  { side: 'top', by: 'fold' },
  { side: 'bottom', by: 'fold' },
];

/** The sides at which a pocket between flat layers ends. */
export const closedSidesOf = ({ closed = usuallyClosed }: PocketPlace): readonly ClosedSide[] => closed;

export const isLevel = (side: PaperSide): boolean => side === 'top' || side === 'bottom';
