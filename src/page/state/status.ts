import { storeOf } from './store.ts';

/** What was just done, for everybody to see and for screen readers to say. */
export const status = storeOf<{ readonly text: string; readonly count: number }>({ text: '', count: 0 });

export const tellStatus = (text: string): void => status.set({ text, count: status.get().count + 1 });
