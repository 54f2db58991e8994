import type { Figure, FigureGroup, FigurePath } from '../../../shared/drawing/figure.ts';

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '"': '&quot;', '<': '&lt;', '>': '&gt;' };

const escaped = (text: string): string => text.replaceAll(/[&"<>]/gu, (sign) => escapes[sign] ?? sign);

const attributes = (values: Readonly<Record<string, string>>): string =>
  Object.entries(values)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');

const element = (name: string, values: Readonly<Record<string, string>>, content: string): string =>
  `<${name}${attributes(values)}>${content}</${name}>`;

const spoken = (name: 'title' | 'desc', text: string): string => element(name, {}, escaped(text));

const pathElement = ({ id, data }: FigurePath): string => element('path', { d: data, id }, '');

/** The service writes colours so. */
const inLowerCase = (own: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(own).map(([name, value]) => [name, value.startsWith('#') ? value.toLowerCase() : value]),
  );

const groupElement = ({ id, title, attributes: own, paths, groups }: FigureGroup): string =>
  element(
    'g',
    { id, ...inLowerCase(own) },
    [spoken('title', title), ...paths.map(pathElement), ...groups.map(groupElement)].join(''),
  );

/**
 * A figure as the text of an SVG document, byte for byte what the service writes, without a document tree: a worker
 * has none. `tests/page/write-drawing.test.ts` holds the two to each other.
 */
export function writeDrawing({ width, height, viewBox, title, description, groups }: Figure): string {
  const content = [spoken('title', title), spoken('desc', description), ...groups.map(groupElement)].join('');
  const namespace = { xmlns: 'http://www.w3.org/2000/svg', version: '1.1' };
  const root = element('svg', { ...namespace, width, height, viewBox }, content);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
}
