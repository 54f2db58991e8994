import type { Container } from '@svgdotjs/svg.js';
import type { Figure, FigureGroup } from '../../shared/drawing/figure.ts';
import { newSvg } from './new-svg.ts';

/**
 * A figure as the text of an SVG document. Presentation attributes only, no transforms, no styles; the same
 * figure gives the same bytes.
 */
export function writeSvg(figure: Figure): string {
  const root = newSvg().attr({ width: figure.width, height: figure.height, viewBox: figure.viewBox });
  describe(root, 'title', figure.title);
  describe(root, 'desc', figure.description);
  for (const group of figure.groups) writeGroup(root, group);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root.svg()}\n`;
}

function writeGroup(parent: Container, { id, title, attributes, paths, groups }: FigureGroup): void {
  const group = parent.group().attr({ id, ...attributes });
  describe(group, 'title', title);
  for (const path of paths) group.path(path.data).attr('id', path.id);
  for (const inner of groups) writeGroup(group, inner);
}

function describe(parent: Container, name: 'title' | 'desc', text: string): void {
  parent.element(name).node.textContent = text;
}
