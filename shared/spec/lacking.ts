import { type FolderSpec, styleOf } from '../styles/registry.ts';

/** What a spec must say before anything can be solved, and how to say it. */
export interface Lack {
  readonly message: string;
  readonly remedy: string;
}

/** What is missing in a spec; nothing when it can be solved. */
export function lackingIn(spec: FolderSpec): Lack | undefined {
  const style = styleOf(spec);
  if (spec.contents !== undefined || style.saysHowLarge(spec)) return undefined;
  if (!hasDimension(spec.dimensions))
    return {
      message: 'neither contents nor dimensions are given',
      remedy:
        'say what goes in, or fix at least one dimension; POST /v1/folders/possible lists what a sheet can become',
    };
  if (spec.stock !== undefined) return undefined;
  return {
    message: `without contents, nothing says how large the ${style.words.piece} is to be`,
    remedy: `give the sheet as stock, say what goes in, or fix ${style.words.sizedBy}`,
  };
}

const hasDimension = (value: unknown): boolean =>
  typeof value === 'object' && value !== null ? Object.values(value).some(hasDimension) : value !== undefined;
