import type * as Clipping from 'clipper2-ts';

/*
 * Stands in for the package "clipper2-ts" in the page (see `build/vite-config.mjs`): only designs with knockouts, or
 * for a tool with a kerf, need it, and it is a third of all that the page would load. What is exported here is the
 * package's own once it was loaded.
 */
export let Clipper: typeof Clipping.Clipper;
export let Clipper64: typeof Clipping.Clipper64;
export let ClipperOffset: typeof Clipping.ClipperOffset;
export let ClipType: typeof Clipping.ClipType;
export let EndType: typeof Clipping.EndType;
export let FillRule: typeof Clipping.FillRule;
export let JoinType: typeof Clipping.JoinType;
export let PathType: typeof Clipping.PathType;

let loading: Promise<void> | undefined;

async function load(): Promise<void> {
  const loaded = await import('clipper2-ts');
  ({ Clipper, Clipper64, ClipperOffset, ClipType, EndType, FillRule, JoinType, PathType } = loaded);
}

/** Loads what clips, once. */
export function loadClipper(): Promise<void> {
  loading ??= load().catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}
