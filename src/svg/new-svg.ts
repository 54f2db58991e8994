import { createRequire } from 'node:module';
import type { Svg } from '@svgdotjs/svg.js';

let make: (() => Svg) | undefined;

/** What builds and writes SVG is loaded for the first drawing: it takes 12 MiB, which a service at rest need not. */
function loadMaker(): () => Svg {
  const load = createRequire(import.meta.url);
  const { registerWindow, SVG } = load('@svgdotjs/svg.js') as typeof import('@svgdotjs/svg.js');
  const { createSVGWindow } = load('svgdom') as typeof import('svgdom');
  const window = createSVGWindow();
  registerWindow(window, window.document);
  return () => SVG();
}

/** An empty SVG document. */
export function newSvg(): Svg {
  make ??= loadMaker();
  const root = make();
  // svg.js sets namespaces as plain attributes; the writer adds the right one itself
  root.node.removeAttribute('xmlns');
  root.node.removeAttribute('xmlns:xlink');
  return root;
}
