/**
 * Loads what clips, `shared/geometry/clip/` with the package "clipper2-ts", which is a third of all that the page would
 * load and which only designs with knockouts or for a tool with a kerf need. The builder puts a module of its own in
 * this one's place (see `build/clipper-later.mjs`); elsewhere it is there anyway, and nothing is to be loaded.
 */
export const loadClipper = async (): Promise<void> => undefined;
