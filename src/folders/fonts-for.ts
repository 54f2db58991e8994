import { type FontShelf, fontKey } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { fontShelf } from '../lettering/font-shelf.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { jsonPointer } from '../problem/json-pointer.ts';

/** For specs without lettering. */
export const noFonts: FontShelf = new Map();

/**
 * Opens the fonts of a spec's lettering; ask before drawing, which is synchronous.
 * @throws CannotBeFolded when a font that the spec carries cannot be read
 */
export async function fontsFor({ knockouts = [] }: FolderSpec): Promise<FontShelf> {
  const asked = knockouts.flatMap((knockout, index) =>
    knockout.kind === 'figure' && 'lettering' in knockout.figure
      ? [{ index, font: knockout.figure.font }]
      : [],
  );
  if (asked.length === 0) return noFonts;
  const { shelf, faults } = await fontShelf(asked.map(({ font }) => font));
  const errors = asked.flatMap(({ index, font }) => {
    const fault = faults.get(fontKey(font));
    if (!fault) return [];
    const { path, message, remedy } = fault;
    return [{ path: jsonPointer(['knockouts', index, 'figure', ...path]), message, remedy }];
  });
  const [first] = errors;
  if (first) throw new CannotBeFolded({ message: first.message, errors, remedies: [] });
  return shelf;
}
