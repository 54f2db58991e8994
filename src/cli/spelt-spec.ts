import { namesIn } from '../../shared/spec/names-in-spec.ts';
import { replaceNames } from '../resources/replace-names.ts';
import { namesKept, replaceSetNames } from '../sets/replace-set-names.ts';
import { withHomeThings } from './home-things.ts';

/**
 * A folder's spec with everything in place that it names. See {@link withHomeThings}.
 * @param spec as it was parsed
 */
export const speltSpec = async (spec: unknown): Promise<unknown> =>
  namesIn(spec).length === 0 ? spec : withHomeThings(({ find }) => replaceNames(spec, find));

/** The same for a set. */
export const speltSet = async (set: unknown): Promise<unknown> =>
  namesKept(set) ? withHomeThings(({ find, findPaper }) => replaceSetNames(set, find, findPaper)) : set;
