/** What a person should know about the files that `watch` writes and removes. */
export const watchHelp = `
For card.json, card.yaml or card.yml:
  card.svg           the drawing; the same as "hemfold svg" writes, with a comment on its second line
  card.problem.txt   why there is none; taken away once there is one

hemfold replaces or removes only what it wrote itself and nobody changed since: its files carry a digest of their
own contents. Where your own card.svg is in the way, it stays and card.problem.txt says so. When a spec goes, its
drawing stays. A spec is drawn when it is new, has changed, is newer than its drawing, or had none at the start;
to draw it again, save it again. A drawing that you move elsewhere comes back at the next start only.

A spec may name a convention, cutter or paper that is kept in the store of DATA_DIR or DATABASE_URL, and the
starting conventions. When what it names changes, save the spec again to have it drawn anew.

Measure a first piece before you cut a good sheet. Blades and lasers hurt: never leave a machine alone while it runs.`;
