import { z } from 'zod';
import type { Panel } from '../../creases/fold-program.ts';
import {
  type Lock,
  type LockedPaper,
  lockClearance,
  lockPractice,
  type Slot,
  slotWidth,
  throughSlot,
} from '../../creases/lock.ts';
import type { Point } from '../../geometry/plane.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { panelOfPieces } from './blank.ts';

/** How what is glued otherwise is held, for the styles that leave the choice. */
export const join = z.enum(['glue', 'slots']).optional().meta({
  description:
    'How the tabs are held: with tape or glue (the default), or without, by tongues that go through slots. Tongues lie on the outside.',
});

export type Join = z.output<typeof join>;

/** All common practice. */
const shape = Object.freeze({
  /** A neck is this long at least; it is longer where its shoulders would not come through the slot, or the tool would take it. */
  leastNeckLength: mm(2),
  /** From shoulders to tip. */
  tongue: mm(8),
  /** The tip is narrower than the neck by this at each side, and finds the slot. */
  tipInset: mm(2),
  /** Wider tongues are hard to push through. */
  widest: mm(40),
  /** Of a long tab, each tongue holds as much. */
  each: mm(70),
  /** A tongue stays this far from the ends of its part of the tab. */
  beside: mm(1),
});

/** What a spec’s slots are cut from, and with which kerf. */
export const lockedPaper = (
  { cutter }: { readonly cutter?: { readonly kerf?: Nm | undefined } | undefined },
  caliper: Nm,
): LockedPaper => ({ caliper, kerf: cutter?.kerf ?? 0 });

/** From where a tab runs on into its tongue to the tongue’s shoulders. */
const neckLength = (paper: LockedPaper): Nm =>
  Math.max(
    shape.leastNeckLength,
    paper.kerf + lockPractice.betweenCuts,
    throughSlot(Math.ceil(slotWidth(paper) / 2), paper.caliper) + lockPractice.play,
  );

/** How far a tongue reaches beyond its tab. */
export const tongueLength = (paper: LockedPaper): Nm => neckLength(paper) + shape.tongue;

/** The least length of a tab’s free edge that has a tongue. */
export const leastTongued = ({ caliper }: LockedPaper): Nm =>
  lockPractice.leastNeck + lockClearance(caliper) + 2 * lockPractice.hold + 2 * shape.beside;

/** How far a slot’s middle stays from an edge or a score beside it. */
export const slotInset = (paper: LockedPaper): Nm => lockPractice.web + Math.ceil(slotWidth(paper) / 2);

/** The least depth of a tab with a tongue, with all of it: its slot keeps its web from the tab’s own fold. */
export const leastLockedTab = (paper: LockedPaper): Nm => slotInset(paper) + tongueLength(paper);

/** An upright free edge of a tab that has tongues, in nanometres of the open sheet. */
export interface TonguedEdge {
  /** The tab’s panel. */
  readonly panel: string;
  /** Where the edge lies, and from where to where it runs. */
  readonly x: Nm;
  readonly from: Nm;
  readonly to: Nm;
  /** The way out of the tab. */
  readonly out: 'left' | 'right';
  readonly paper: LockedPaper;
}

interface Tongue {
  readonly name: string;
  readonly middle: Nm;
  readonly neck: Nm;
  readonly slot: Nm;
  readonly shoulders: Nm;
}

function tonguesOf({ panel, from, to, paper }: TonguedEdge): readonly Tongue[] {
  const count = Math.max(1, Math.floor((to - from) / shape.each));
  const part = (to - from) / count;
  const half = Math.floor(Math.min(shape.widest, part - 2 * shape.beside) / 2);
  const slot = 2 * (half - lockPractice.hold);
  return Array.from({ length: count }, (_, index) => ({
    name: `${panel} tongue${count === 1 ? '' : ` ${index + 1}`}`,
    middle: Math.round(from + (index + 0.5) * part),
    neck: slot - lockClearance(paper.caliper),
    slot,
    shoulders: 2 * half,
  }));
}

/** The panels of a tab’s tongues. */
export const tonguePanels = (edge: TonguedEdge): Panel[] =>
  tonguesOf(edge).map(({ name, middle, neck, shoulders }) => {
    const { x, out, paper } = edge;
    const beyond = (distance: Nm) => (out === 'left' ? x - distance : x + distance);
    const [low, high] = [middle - Math.floor(neck / 2), middle + Math.floor(neck / 2)];
    const [wideLow, wideHigh] = [middle - shoulders / 2, middle + shoulders / 2];
    const [base, tip] = [beyond(neckLength(paper)), beyond(tongueLength(paper))];
    return panelOfPieces(
      name,
      [
        [
          [x, low],
          [base, low],
          [base, high],
          [x, high],
        ],
        [
          [base, wideLow],
          [tip, low + shape.tipInset],
          [tip, high - shape.tipInset],
          [base, wideHigh],
        ],
      ],
      { label: 'tongue', labels: 'tongues' },
    );
  });

/** The names of a tab and its tongues, which move together. */
export const tabAndTongues = (edge: TonguedEdge): readonly string[] => [
  edge.panel,
  ...tonguesOf(edge).map(({ name }) => name),
];

/**
 * A tab’s tongues with their slots.
 * @param to the panel with the slots
 * @param lies where a point of the tab comes to lie, on the open sheet of that panel; it turns nothing by a quarter
 */
export const locksAt = (edge: TonguedEdge, to: string, lies: (point: Point) => Point): Lock[] =>
  tonguesOf(edge).map(({ name, middle, neck, slot }) => {
    const { panel, x, paper } = edge;
    const there = lies({ x, y: middle });
    const [along, across] = [slot / 2, slotWidth(paper) / 2];
    const opening: Slot = {
      left: Math.round(there.x - across),
      right: Math.round(there.x + across),
      top: there.y - along,
      bottom: there.y + along,
    };
    const half = Math.floor(neck / 2);
    return {
      panel,
      tongue: name,
      to,
      neck: [
        { x, y: middle - half },
        { x, y: middle + half },
      ],
      slot: opening,
    };
  });
