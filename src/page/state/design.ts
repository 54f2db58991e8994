import type { Answer, FoldedAnswer, Further } from '../ask/answer.ts';
import { ask } from '../ask/ask.ts';
import type { Catalogue } from '../ask/catalogue.ts';
import { type Addressed, fromFragment, toFragment } from '../spec/address.ts';
import { changed, type History, historyOf, redone, undone } from '../spec/history.ts';
import { type Json, type Spec, valueAt, withChanges, withValue } from '../spec/pointer.ts';
import { storeOf } from './store.ts';

/** The design on the table, and what the core makes of it. */
export interface DesignState {
  readonly history: History<Addressed>;
  readonly answer: Answer | undefined;
  /** The last folder that could be folded: it stays to be seen while something is mended. */
  readonly folded: FoldedAnswer | undefined;
  readonly further: Further | undefined;
  /** Nothing was changed for a moment: only then is it worth telling what is wrong. */
  readonly settled: boolean;
  /** The spec about which everything was told. */
  readonly told: Spec | undefined;
  readonly failed: boolean;
  readonly catalogue: Catalogue;
}

/** Milliseconds without a change before what takes longer is asked, and faults are told. */
const pauseMs = 300;

/** Whoever writes American English cuts in inches. */
const usualUnits = (): 'in' | 'mm' => (/^en-(?:US|LR)|^my/u.test(navigator.language) ? 'in' : 'mm');

export const emptySpec = (units: 'in' | 'mm' = usualUnits()): Spec => ({ style: 'twin-sleeve', units });

/** Where a design waits while its maker signs in or out on another page of the same tab. */
const leftKey = 'hemfold-table';

/** A design that was left on the table, once. */
function leftOnTable(): Addressed | undefined {
  try {
    const left = sessionStorage.getItem(leftKey) ?? '';
    sessionStorage.removeItem(leftKey);
    return fromFragment(left);
  } catch {
    return undefined;
  }
}

const opening = (): Addressed => {
  const left = leftOnTable();
  return fromFragment(location.hash) ?? left ?? { spec: emptySpec(), swapped: false };
};

export const design = storeOf<DesignState>({
  history: historyOf(opening()),
  answer: undefined,
  folded: undefined,
  further: undefined,
  settled: true,
  told: undefined,
  failed: false,
  catalogue: { styles: [], sizes: [], conventions: [] },
});

/** In what the page writes lengths. */
export const unitsIn = ({ history }: DesignState): Json | undefined => history.now.spec.units;

/** Whether the faces of the sheet are swapped. */
export const swappedIn = ({ history }: DesignState): boolean => history.now.swapped;

export const specNow = (): Spec => design.get().history.now.spec;

let asking = false;
let askAgain = false;
let pause: ReturnType<typeof setTimeout> | undefined;

/** Asks about the newest design; while an answer is awaited, only the last of several changes counts. */
async function fold(): Promise<void> {
  if (asking) {
    askAgain = true;
    return;
  }
  asking = true;
  const spec = specNow();
  try {
    const answer = await ask('fold', spec);
    // what takes longer may have been asked and answered before this
    const isNews = specNow() === spec && design.get().told !== spec;
    design.set({
      answer,
      failed: false,
      ...(answer.state === 'folded' ? { folded: answer } : {}),
      ...(answer.state === 'empty' ? { folded: undefined } : {}),
      ...(isNews ? { further: undefined, told: undefined } : {}),
    });
  } catch {
    design.set({ failed: true });
  }
  asking = false;
  if (!askAgain) return;
  askAgain = false;
  await fold();
}

const writeAddress = (): void => history.replaceState(null, '', toFragment(design.get().history.now));

async function rest(): Promise<void> {
  // what is typed after a pause is another change
  design.set({ settled: true, history: { ...design.get().history, about: undefined } });
  const spec = specNow();
  try {
    const further = await ask('further', spec);
    if (specNow() === spec) design.set({ further, told: spec });
  } catch {
    // the answer itself has told it
  }
}

function show(next: History<Addressed>, typing = false): void {
  design.set({ history: next, settled: !typing && design.get().settled });
  void fold();
  clearTimeout(pause);
  pause = setTimeout(() => {
    writeAddress();
    void rest();
  }, pauseMs);
}

/** Puts a design on the table. @param about see {@link changed} */
export const put = (next: Addressed, about?: string): void =>
  show(changed(design.get().history, next, about), about !== undefined);

/** Changes one member of the spec; nothing in its place leaves it out. */
export const change = (pointer: string, value: Json | undefined, about?: string): void => {
  const { now } = design.get().history;
  put({ ...now, spec: withValue(now.spec, pointer, value) }, about);
};

/** Changes several members at once. */
export const changeAll = (
  members: readonly (readonly [pointer: string, value: Json | undefined])[],
): void => {
  const { now } = design.get().history;
  put({
    ...now,
    spec: members.reduce((spec, [pointer, value]) => withValue(spec, pointer, value), now.spec),
  });
};

/** Takes a remedy or an alternative. */
export const take = (changes: Parameters<typeof withChanges>[1]): void => {
  const { now } = design.get().history;
  put({ ...now, spec: withChanges(now.spec, changes) });
};

export const swapFaces = (): void => {
  const { now } = design.get().history;
  put({ ...now, swapped: !now.swapped });
};

export const undo = (): void => show(undone(design.get().history));
export const redo = (): void => show(redone(design.get().history));
export const startOver = (): void => {
  const units = valueAt(specNow(), '/units');
  put({ spec: emptySpec(units === 'in' || units === 'mm' ? units : undefined), swapped: false });
};

/** Leaves the design on the table until this tab shows the page again. */
export function leaveOnTable(): void {
  try {
    sessionStorage.setItem(leftKey, toFragment(design.get().history.now));
  } catch {
    // then the browser's way back still has it
  }
}

/** Begins: folds what the address holds, and follows it when it is changed by hand. */
export function begin(): void {
  void ask('catalogue').then((catalogue) => design.set({ catalogue }));
  void fold();
  pause = setTimeout(() => void rest(), 0);
  addEventListener('hashchange', () => {
    const addressed = fromFragment(location.hash);
    if (addressed && toFragment(addressed) !== toFragment(design.get().history.now)) put(addressed);
  });
}
