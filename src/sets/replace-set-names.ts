import { storedName } from '../../shared/spec/stored-name.ts';
import type { FindKept } from '../resources/find-kept.ts';
import { replaceNames } from '../resources/replace-names.ts';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Looks up a paper with all that its owner notes of it; undefined for a name that stands for nothing. */
export type FindPaper = (name: string) => Promise<unknown>;

/** Whether a set names anything of its caller's. */
export const namesKept = (set: unknown): boolean =>
  isRecord(set) &&
  [set.cutter, set.convention, ...(Array.isArray(set.papers) ? set.papers : [])].some(
    (each) => typeof each === 'string',
  );

/**
 * A set with everything that it names of its caller's in its place. A name that stands for nothing is left, and refused
 * where the set is read.
 * @param set parsed JSON, not yet read
 */
export async function replaceSetNames(set: unknown, find: FindKept, findPaper: FindPaper): Promise<unknown> {
  if (!isRecord(set)) return set;
  const { cutter, convention, papers } = set;
  const spelt = await replaceNames(
    { ...(cutter === undefined ? {} : { cutter }), ...(convention === undefined ? {} : { convention }) },
    find,
  );
  if (!Array.isArray(papers)) return { ...set, ...(isRecord(spelt) ? spelt : {}) };
  return {
    ...set,
    ...(isRecord(spelt) ? spelt : {}),
    papers: await Promise.all(papers.map((paper: unknown) => namedPaper(paper, findPaper))),
  };
}

async function namedPaper(paper: unknown, findPaper: FindPaper): Promise<unknown> {
  const name = storedName.safeParse(paper);
  if (!name.success) return paper;
  const kept = await findPaper(name.data);
  if (!isRecord(kept)) return paper;
  // how a sheet is turned is for the nesting to decide, and pieces name the paper as the set does
  const { turned: _turned, ...own } = kept;
  return { ...own, name: name.data };
}
