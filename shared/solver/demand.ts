import { contentsDefaults as defaults } from '../contents/defaults.ts';
import { type Binding, setsThatFit, setThickness } from '../contents/stack.ts';
import { raisedOnPockets } from '../knockouts/raised.ts';
import type { Nm } from '../lengths/nanometres.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import type { Demand, Ease, Style } from '../styles/style.ts';
import { givenIn } from './given.ts';
import { extent, type Sheet } from './sheets.ts';

type Contents = NonNullable<FolderSpec['contents']>;

/** The contents as they will lie in each pocket. */
export interface Load {
  readonly itemName: 'card' | 'envelope';
  /** As given, before turning. */
  readonly item: { readonly width: Nm; readonly height: Nm };
  readonly perPocket: number;
  readonly set: Nm;
  /** Sets that each pocket could take by the given spine, where one is given. */
  readonly spineHolds?: number;
}

/** The folder's own layers around the stack. */
const bindingOf = (style: Style<FolderSpec>, sheet: Sheet, spec: FolderSpec): Binding => ({
  layers: style.layers,
  caliper: sheet.paper.caliper,
  ease: easeOf(style, spec).spine + raisedOnPockets(spec.knockouts, style.pockets),
});

/** The play that a spec asks for, or else the style, or else folders. */
export const easeOf = ({ usualEase }: Style<FolderSpec>, { ease }: FolderSpec): Ease => ({
  along: ease?.along ?? usualEase?.along ?? defaults.easeAlong,
  across: ease?.across ?? usualEase?.across ?? defaults.easeAcross,
  spine: ease?.spine ?? usualEase?.spine ?? defaults.spineEase,
});

/** How many sets of a thickness each pocket takes by a spine, or whatever else holds the stack; all pockets alike. */
export const setsPerPocket = (
  spine: Nm,
  set: Nm,
  style: Style<FolderSpec>,
  sheet: Sheet,
  spec: FolderSpec,
): number => Math.floor(setsThatFit(spine, set, bindingOf(style, sheet, spec)) / style.pockets.length);

/** What holds the stack, where the spec fixes it: it decides how many sets fit. */
export const givenDepth = ({ depth }: Style<FolderSpec>, spec: FolderSpec): Nm | undefined =>
  depth === undefined ? undefined : givenIn(spec, depth);

/** How many sets go in each pocket and how thick they are. */
export function loadOf(contents: Contents, style: Style<FolderSpec>, sheet: Sheet, spec: FolderSpec): Load {
  const set = setThickness(contents);
  const spine = givenDepth(style, spec);
  const holds = spine === undefined ? undefined : setsPerPocket(spine, set, style, sheet, spec);
  return {
    itemName: contents.envelope ? 'envelope' : 'card',
    item: extent(contents.envelope ?? contents.item),
    perPocket: contents.perPocket ?? 1,
    set,
    ...(holds === undefined ? {} : { spineHolds: holds }),
  };
}

/** What a load asks of the folder when it stands as given, or turned by a quarter. */
export function demandOf(load: Load, turned: boolean, style: Style<FolderSpec>, spec: FolderSpec): Demand {
  const { width, height } = load.item;
  const ease = easeOf(style, spec);
  return {
    itemName: load.itemName,
    width: turned ? height : width,
    height: turned ? width : height,
    inPocket: load.perPocket * load.set,
    stack: load.perPocket * style.pockets.length * load.set + raisedOnPockets(spec.knockouts, style.pockets),
    easeAcross: ease.across,
    easeAlong: ease.along,
  };
}
