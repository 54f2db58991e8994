import type { FoldStep, GlueStrip, Panel } from '../../creases/fold-program.ts';
import { glueKeepOut } from '../../creases/glue-keep-out.ts';
import type { Lock, LockedPaper } from '../../creases/lock.ts';
import type { PocketPlace } from '../../folding/pocket-place.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { foldAlong, panelOf } from './blank.ts';
import {
  leastTongued,
  locksAt,
  type TonguedEdge,
  tabAndTongues,
  tongueLength,
  tonguePanels,
} from './lock.ts';

/** A pocket that is folded up from the bottom edge of a panel. Lengths in nanometres, inside face up. */
export interface BottomPocket {
  readonly name: string;
  /** The panel that it is folded up over. */
  readonly panel: string;
  readonly left: Nm;
  readonly right: Nm;
  /** Where it is folded. */
  readonly bottom: Nm;
  readonly height: Nm;
  /** Depth of its tabs. */
  readonly tab: Nm;
  readonly glueWidth: Nm;
  /** Of a pocket whose tabs are locked and not glued: what they are cut from. Its tabs’ depth is with their tongues. */
  readonly locked?: LockedPaper | undefined;
  /** How it ends at each side: with a tab that is folded behind it, or glued to the panel near its edge. */
  readonly ends: Readonly<Record<'left' | 'right', 'tab' | 'glue'>>;
}

const { edge, score, mouth } = glueKeepOut;

/** All common practice. */
export const pocketPractice = Object.freeze({
  /** A pocket that is glued stays this far from the spine at its fold, and further by the taper at its mouth: a notch. */
  notch: mm(1.5),
  notchTaper: mm(3),
  /** Tabs begin this far from the fold and the mouth, and taper by as much again at each end. */
  tabInset: mm(2),
  tabTaper: mm(2),
  /** Contents stay this far from glue that nothing covers. */
  besideGlue: mm(1),
  /** A lower pocket has no room for its glue. */
  least: mm(25),
});

const { notch, notchTaper, tabInset, tabTaper, besideGlue } = pocketPractice;

/** What a glued end takes of the pocket's width. */
export const gluedEnd = (glueWidth: Nm): Nm => notch + notchTaper + edge + glueWidth + besideGlue;

/** The least depth of a tab: its glue, clear of its edge and of its score. */
export const leastTab = (glueWidth: Nm): Nm => glueWidth + edge + score;

const tabName = ({ name }: BottomPocket, side: 'left' | 'right', alone: boolean): string =>
  alone ? `${name} tab` : `${side} ${name} tab`;

const sides = ['left', 'right'] as const;
type Side = (typeof sides)[number];

const tabsOf = (pocket: BottomPocket) => {
  const tabbed = sides.filter((side) => pocket.ends[side] === 'tab');
  return tabbed.map((side) => ({ side, name: tabName(pocket, side, tabbed.length === 1) }));
};

/** Where a locked tab runs on into its tongues. */
function tonguedEdge(
  { left, right, bottom, height, tab }: BottomPocket,
  side: Side,
  panel: string,
  paper: LockedPaper,
): TonguedEdge {
  const depth = tab - tongueLength(paper);
  const inset = tabInset + tabTaper;
  return {
    panel,
    x: side === 'left' ? left - depth : right + depth,
    from: bottom + inset,
    to: bottom + height - inset,
    out: side,
    paper,
  };
}

/** The least height of a pocket whose tabs are locked. */
export const leastLockedPocket = (paper: LockedPaper): Nm => leastTongued(paper) + 2 * (tabInset + tabTaper);

/** The pocket's own panel and its tabs. */
export function pocketPanels(pocket: BottomPocket): Panel[] {
  const { name, left, right, bottom, height, tab, ends, locked } = pocket;
  const inset = (side: 'left' | 'right') => (ends[side] === 'tab' ? [0, 0] : [notch, notch + notchTaper]);
  const [[fromLeft = 0, atMouthLeft = 0], [fromRight = 0, atMouthRight = 0]] = [
    inset('left'),
    inset('right'),
  ];
  const end = bottom + height;
  return [
    panelOf(
      name,
      [
        [left + fromLeft, bottom],
        [right - fromRight, bottom],
        [right - atMouthRight, end],
        [left + atMouthLeft, end],
      ],
      { label: 'pocket', labels: 'pockets' },
    ),
    ...tabsOf(pocket).flatMap(({ side, name: own }) => {
      const depth = locked === undefined ? tab : tab - tongueLength(locked);
      const [x, away] = side === 'left' ? [left, -depth] : [right, depth];
      const corners = [
        [x, bottom + tabInset],
        [x, end - tabInset],
        [x + away, end - tabInset - tabTaper],
        [x + away, bottom + tabInset + tabTaper],
      ] as const;
      return [
        panelOf(own, corners, { label: 'tab', labels: 'tabs' }),
        ...(locked === undefined ? [] : tonguePanels(tonguedEdge(pocket, side, own, locked))),
      ];
    }),
  ];
}

/** The tabs' folds, which come before the pocket's own. */
export const tabFolds = (pocket: BottomPocket): FoldStep[] =>
  tabsOf(pocket).map(({ side, name }) => {
    const [x, away] = side === 'left' ? [pocket.left, -pocket.tab] : [pocket.right, pocket.tab];
    const middle = pocket.bottom + pocket.height / 2;
    const { locked } = pocket;
    const only = locked === undefined ? [name] : tabAndTongues(tonguedEdge(pocket, side, name, locked));
    return foldAlong(
      name,
      [
        [x, pocket.bottom],
        [x, pocket.bottom + pocket.height],
      ],
      [x + away, middle],
      { only },
    );
  });

/** Where the pocket is glued to its panel, once it is folded up. */
export function pocketStrips(pocket: BottomPocket): GlueStrip[] {
  const { name, panel, left, right, bottom, height, glueWidth, tab, ends } = pocket;
  const end = bottom + height;
  const tabs = tabsOf(pocket).map(({ side, name: own }): GlueStrip => {
    const top = bottom + tabInset + tabTaper + edge;
    const stop = Math.min(end - tabInset - tabTaper - edge, end - mouth);
    const outer = side === 'left' ? left - tab + edge : right + tab - edge - glueWidth;
    return {
      panel: own,
      face: 'outside',
      to: panel,
      left: outer,
      right: outer + glueWidth,
      top,
      bottom: stop,
    };
  });
  const glued = sides
    .filter((side) => ends[side] === 'glue')
    .map((side): GlueStrip => {
      const margin = notch + notchTaper + edge;
      const from = side === 'left' ? left + margin : right - margin - glueWidth;
      return {
        panel: name,
        face: 'inside',
        to: panel,
        left: from,
        right: from + glueWidth,
        top: bottom + score,
        bottom: end - mouth,
      };
    });
  return [...tabs, ...glued];
}

/** The tongues of its tabs and their slots in the panel behind, once it is folded up. */
export function pocketLocks(pocket: BottomPocket): Lock[] {
  const { locked } = pocket;
  if (locked === undefined) return [];
  return tabsOf(pocket).flatMap(({ side, name }) =>
    locksAt(tonguedEdge(pocket, side, name, locked), pocket.panel, ({ x, y }) => ({
      x: 2 * pocket[side] - x,
      y: 2 * pocket.bottom - y,
    })),
  );
}

/** What the pocket holds its contents between. */
export const pocketPlace = (pocket: Pick<BottomPocket, 'name' | 'panel' | 'ends'>): PocketPlace => ({
  name: pocket.name,
  panel: pocket.panel,
  behind: tabsOf(pocket as BottomPocket).map(({ name }) => name),
  front: [pocket.name],
  mouth: 'top',
  closed: [{ side: 'bottom', by: 'fold' }, ...sides.map((side) => ({ side, by: pocket.ends[side] }))],
});
