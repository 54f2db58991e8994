/** What an owner notes of a paper beside what a spec says of it. */
export const ownersNotes = ['faces', 'count', 'price', 'notes'] as const;

const isNote = (member: string): boolean => (ownersNotes as readonly string[]).includes(member);

/** A kept paper without its owner's notes, as a spec may hold it. */
export const withoutNotes = <Value>(kept: Readonly<Record<string, Value>>): Record<string, Value> =>
  Object.fromEntries(Object.entries(kept).filter(([member]) => !isNote(member)));
