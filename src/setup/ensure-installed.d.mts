export interface Entry {
  readonly version?: string;
  readonly optional?: boolean;
  readonly os?: readonly string[];
  readonly cpu?: readonly string[];
  readonly libc?: readonly string[];
  readonly link?: boolean;
}
export type Entries = Readonly<Record<string, Entry>>;
export function fits(list: readonly string[] | undefined, actual: string): boolean;
export function missingPackages(
  wanted: Entries,
  present: Entries,
  isThere: (path: string) => boolean,
): readonly string[];
