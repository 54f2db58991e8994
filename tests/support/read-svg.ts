import { SaxesParser, type SaxesTagNS } from 'saxes';

/*
 * A reader of layered SVG that shares nothing with the writer: an XML parser and the SVG 1.1 text. What the
 * real size is follows from the root's width, height and viewBox alone. It is strict: what a plain cutting
 * file has no need of is a fault.
 */

/** A point in millimetres from the drawing's top left corner. */
export interface At {
  readonly x: number;
  readonly y: number;
}

/** One piece of a path in millimetres: two points for a line, four for a cubic. */
export type Piece = readonly [At, At] | readonly [At, At, At, At];

/** One stretch of a path from its M to the next; a closed one includes the piece that closes it. */
export interface Subpath {
  readonly closed: boolean;
  readonly pieces: readonly Piece[];
}

export interface ReadPath {
  readonly id: string;
  readonly subpaths: readonly Subpath[];
}

export interface ReadGroup {
  readonly id: string;
  readonly title: string;
  /** Without the id. */
  readonly attributes: Readonly<Record<string, string>>;
  readonly paths: readonly ReadPath[];
  readonly groups: readonly ReadGroup[];
}

export interface ReadSvg {
  /** Real size in millimetres. */
  readonly width: number;
  readonly height: number;
  /** Millimetres in one user unit. */
  readonly scale: number;
  readonly title: string;
  readonly description: string;
  readonly groups: readonly ReadGroup[];
}

/** Millimetres of each absolute unit: 1 in = 2.54 cm = 25.4 mm = 96 px = 72 pt = 6 pc (CSS Values and Units 3). */
const mmPerUnit: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: 25.4,
  px: 25.4 / 96,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
};

const allowed: Readonly<
  Record<string, { readonly attributes: readonly string[]; readonly in: readonly string[] }>
> = {
  svg: { attributes: ['xmlns', 'version', 'width', 'height', 'viewBox'], in: [''] },
  title: { attributes: [], in: ['svg', 'g'] },
  desc: { attributes: [], in: ['svg', 'g'] },
  g: {
    attributes: [
      'id',
      'fill',
      'fill-rule',
      'stroke',
      'stroke-width',
      'stroke-dasharray',
      'stroke-linecap',
      'stroke-linejoin',
    ],
    in: ['svg', 'g'],
  },
  path: { attributes: ['id', 'd'], in: ['g'] },
};

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

/**
 * Reads layered SVG.
 * @throws Error that names the first thing a plain cutting file may not hold
 */
export function readSvg(text: string): ReadSvg {
  const root = elementsOf(text);
  const { scale, origin, width, height } = frameOf(root.attributes);
  const ids = new Set<string>();
  const group = (element: Element): ReadGroup => {
    const { id = '', ...attributes } = element.attributes;
    claim(ids, id);
    checkPresentation(attributes);
    return {
      id,
      attributes,
      title: textOf(element, 'title'),
      groups: element.children.filter((child) => child.name === 'g').map(group),
      paths: element.children
        .filter((child) => child.name === 'path')
        .map((path) => {
          claim(ids, path.attributes.id ?? '');
          return {
            id: path.attributes.id ?? '',
            subpaths: readPath(path.attributes.d ?? '', (x, y) => ({
              x: (x - origin.x) * scale,
              y: (y - origin.y) * scale,
            })),
          };
        }),
    };
  };
  return {
    width,
    height,
    scale,
    title: textOf(root, 'title'),
    description: textOf(root, 'desc'),
    groups: root.children.filter((child) => child.name === 'g').map(group),
  };
}

/** All groups of a drawing, outer before inner. */
export const everyGroup = (groups: readonly ReadGroup[]): readonly ReadGroup[] =>
  groups.flatMap((group) => [group, ...everyGroup(group.groups)]);

/** All paths of a group and of the groups in it. */
export const pathsIn = (group: ReadGroup): readonly ReadPath[] =>
  everyGroup([group]).flatMap(({ paths }) => paths);

/** All pieces of paths. */
export const piecesOf = (paths: readonly ReadPath[]): readonly Piece[] =>
  paths.flatMap(({ subpaths }) => subpaths.flatMap(({ pieces }) => pieces));

function claim(ids: Set<string>, id: string): void {
  if (!/^[a-z][a-z0-9-]*$/u.test(id)) throw new Error(`"${id}" is no id`);
  if (ids.has(id)) throw new Error(`the id ${id} comes twice`);
  ids.add(id);
}

function textOf(element: Element, name: string): string {
  const found = element.children.filter((child) => child.name === name);
  if (found.length > 1) throw new Error(`${element.name} has ${found.length} of ${name}`);
  return found[0]?.text ?? '';
}

function elementsOf(text: string): Element {
  const parser = new SaxesParser({ xmlns: true });
  const outside: Element = { name: '', attributes: {}, children: [], text: '' };
  const open = [outside];
  const here = (): Element => open.at(-1) ?? outside;
  const never = (what: string) => () => {
    throw new Error(`the file holds ${what}`);
  };
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('doctype', never('a document type'));
  parser.on('cdata', never('a CDATA section'));
  parser.on('comment', never('a comment'));
  parser.on('processinginstruction', never('a processing instruction'));
  parser.on('opentag', (tag) => {
    const element = elementFrom(tag, here().name);
    here().children.push(element);
    open.push(element);
  });
  parser.on('closetag', () => open.pop());
  parser.on('text', (words) => {
    const element = here();
    if (element.name === 'title' || element.name === 'desc') element.text += words;
    else if (words.trim() !== '') throw new Error(`loose text in ${element.name || 'the file'}`);
  });
  parser.write(text).close();
  const root = outside.children[0];
  if (root?.name !== 'svg') throw new Error('the root is not svg');
  return root;
}

function elementFrom(tag: SaxesTagNS, parent: string): Element {
  const rule = allowed[tag.name];
  if (!rule || tag.uri !== 'http://www.w3.org/2000/svg')
    throw new Error(`the element ${tag.name} is not plain`);
  if (!rule.in.includes(parent)) throw new Error(`${tag.name} inside ${parent || 'nothing'}`);
  const attributes = Object.fromEntries(
    Object.entries(tag.attributes).map(([name, attribute]) => [name, attribute.value]),
  );
  const strange = Object.keys(attributes).find((name) => !rule.attributes.includes(name));
  if (strange !== undefined) throw new Error(`${tag.name} has the attribute ${strange}`);
  return { name: tag.name, attributes, children: [], text: '' };
}

const number = /^-?\d+(?:\.\d{1,6})?$/u;

function readNumber(text: string | undefined): number {
  if (text === undefined || !number.test(text)) throw new Error(`"${text}" is no plain number`);
  return Number(text);
}

/** The real size, and the scale and origin that the viewBox gives (SVG 1.1, 7.7). */
function frameOf(attributes: Readonly<Record<string, string>>) {
  const [width, height] = [realLength(attributes.width), realLength(attributes.height)];
  const box = (attributes.viewBox ?? '').split(' ').map(readNumber);
  const [x, y, across, down] = box;
  if (box.length !== 4 || x === undefined || y === undefined || across === undefined || down === undefined)
    throw new Error('the viewBox has not four numbers');
  if (!(across > 0 && down > 0 && width > 0 && height > 0)) throw new Error('the drawing has no area');
  const [scale, other] = [width / across, height / down];
  // preserveAspectRatio would centre the drawing: then it would not be where the numbers say
  if (Math.abs(scale - other) > 1e-5 * scale) throw new Error('width, height and viewBox disagree');
  return { width, height, scale, origin: { x, y } };
}

function realLength(text: string | undefined): number {
  const parts = /^(?<value>[\d.]+)(?<unit>[a-z]+)$/u.exec(text ?? '')?.groups;
  const perUnit = mmPerUnit[parts?.unit ?? ''];
  if (perUnit === undefined) throw new Error(`"${text}" is no real length`);
  return readNumber(parts?.value) * perUnit;
}

const presentation: Readonly<Record<string, RegExp>> = {
  fill: /^(?:none|#[0-9a-fA-F]{6})$/u,
  stroke: /^(?:none|#[0-9a-fA-F]{6})$/u,
  'fill-rule': /^(?:nonzero|evenodd)$/u,
  'stroke-width': /^\d+(?:\.\d{1,3})?$/u,
  'stroke-dasharray': /^\d+(?:\.\d{1,3})?(?: \d+(?:\.\d{1,3})?)+$/u,
  'stroke-linecap': /^(?:butt|round|square)$/u,
  'stroke-linejoin': /^(?:miter|round|bevel)$/u,
};

function checkPresentation(attributes: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (!presentation[name]?.test(value)) throw new Error(`${name} cannot be "${value}"`);
  }
}

const coordinate = /^(?!-0(?:\.0*)?$)-?(?:0|[1-9]\d*)(?:\.\d{1,3})?$/u;
const argumentCount: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, Z: 0 };

/** Path data of absolute M, L, C and Z, each with its own letter; at most three decimals. */
function readPath(data: string, at: (x: number, y: number) => At): readonly Subpath[] {
  const tokens = data.split(' ');
  const subpaths: { closed: boolean; pieces: Piece[]; readonly start: At; here: At }[] = [];
  for (let index = 0; index < tokens.length; ) {
    const command = tokens[index++] ?? '';
    const count = argumentCount[command];
    if (count === undefined) throw new Error(`the path command "${command}" is not M, L, C or Z`);
    const numbers = tokens.slice(index, index + count).map((token) => {
      if (!coordinate.test(token)) throw new Error(`the path has "${token}" for a number`);
      return Number(token);
    });
    index += count;
    if (numbers.length !== count) throw new Error(`${command} has ${numbers.length} numbers`);
    const points: At[] = [];
    for (let pair = 0; pair < count; pair += 2) points.push(at(numbers[pair] ?? 0, numbers[pair + 1] ?? 0));
    const path = subpaths.at(-1);
    const [first, second, third] = points;
    if (command === 'M' && first) {
      subpaths.push({ closed: false, pieces: [], start: first, here: first });
      continue;
    }
    if (!path || path.closed) throw new Error(`${command} without an M before it`);
    if (command === 'Z') {
      path.closed = true;
      if (path.here.x !== path.start.x || path.here.y !== path.start.y)
        path.pieces.push([path.here, path.start]);
    } else if (first) {
      path.pieces.push(second && third ? [path.here, first, second, third] : [path.here, first]);
      path.here = third ?? first;
    }
  }
  if (subpaths.some(({ pieces }) => pieces.length === 0)) throw new Error('a path draws nothing');
  return subpaths.map(({ closed, pieces }) => ({ closed, pieces }));
}
