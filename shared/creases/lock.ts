import type { Point } from '../geometry/plane.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';

/**
 * A tab that is held without glue: its tongue goes through a slot in the layer that the tab lies on, and its shoulders do
 * not come back. All of it on the open sheet, in nanometres, inside face up; slots run along an axis.
 */
export interface Lock {
  /** The panel that is held. */
  readonly panel: string;
  /** The panel of the tongue: a neck, and the shoulders beyond it. */
  readonly tongue: string;
  /** The panel with the slot. */
  readonly to: string;
  /** Where the tab runs on into its tongue: this line comes to lie in the slot. */
  readonly neck: readonly [Point, Point];
  readonly slot: Slot;
}

/** An opening, upright or level, that a tongue goes through. */
export interface Slot {
  readonly left: Nm;
  readonly top: Nm;
  readonly right: Nm;
  readonly bottom: Nm;
}

/** How far the parts of a lock keep from each other, in nanometres; common practice. */
export const lockPractice = Object.freeze({
  /** Paper between a slot and an edge, a score or another slot: narrower, it tears. */
  web: mm(6),
  /** How far each shoulder reaches beyond the end of its slot: less, and it slips out. */
  hold: mm(2),
  /** A narrower neck tears off. */
  leastNeck: mm(10),
  /** Shoulders come further through than they must by this at least, or they are forced and bend. */
  play: mm(0.5),
  /** Shoulders that come through further than that let the tab slip to and fro. */
  mostPlay: mm(2),
  /** Both cuts of a slot run into each other where less than that is left between them. */
  betweenCuts: mm(0.5),
});

/** What slots and tongues are cut from, and what the tool takes away with each cut; in nanometres. */
export interface LockedPaper {
  readonly caliper: Nm;
  readonly kerf: Nm;
}

/** By how much a slot is longer than the neck in it: paper that is pushed through sideways takes room by its thickness. */
export const lockClearance = (caliper: Nm): Nm => Math.max(mm(0.5), Math.ceil(2 * caliper));

/** How wide a slot is: a tongue goes through it askew, and its two cuts lie beside each other. */
export const slotWidth = ({ caliper, kerf }: LockedPaper): Nm =>
  Math.max(mm(1), Math.ceil(3 * caliper), kerf + lockPractice.betweenCuts);

/**
 * How far shoulders lie beyond the line that comes to lie in the slot, at least: past the slot's edge, and once through the
 * paper.
 * @param beside from that line to the slot's edge
 */
export const throughSlot = (beside: Nm, caliper: Nm): Nm => beside + Math.ceil(caliper);
