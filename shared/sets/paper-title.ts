import { sizeById } from '../sizes/catalogue.ts';
import type { SetSpec } from './set-spec.ts';

/** What people call a paper of the set. */
export function paperTitle({ papers }: Pick<SetSpec, 'papers'>, index: number): string {
  const { name, size } = papers[index] ?? {};
  if (name !== undefined) return name;
  return (size === undefined ? undefined : sizeById(size)?.title) ?? `paper ${index + 1}`;
}
