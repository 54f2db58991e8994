import { describe, expect, it } from 'vitest';
import { readSvg } from './read-svg.ts';

const file = (inside: string, root = 'width="100mm" height="50mm" viewBox="0 0 100 50"') =>
  `<?xml version="1.0" encoding="UTF-8"?><svg xmlns="http://www.w3.org/2000/svg" ${root}>${inside}</svg>`;
const path = (data: string) => file(`<g id="cut"><path id="one" d="${data}"/></g>`);

describe('the reader of layered SVG', () => {
  it.each([
    ['millimetres', 'width="100mm" height="50mm" viewBox="0 0 100 50"', 20, 30],
    ['twice the size', 'width="200mm" height="100mm" viewBox="0 0 100 50"', 40, 60],
    ['inches', 'width="100in" height="50in" viewBox="0 0 100 50"', 508, 762],
    [
      '96 px to the inch',
      'width="100px" height="50px" viewBox="0 0 100 50"',
      20 * (25.4 / 96),
      30 * (25.4 / 96),
    ],
    [
      '72 pt to the inch',
      'width="100pt" height="50pt" viewBox="0 0 100 50"',
      20 * (25.4 / 72),
      30 * (25.4 / 72),
    ],
    ['a view that starts elsewhere', 'width="100mm" height="50mm" viewBox="5 10 100 50"', 15, 20],
  ])('finds positions by the root alone: %s', (_, root, x, y) => {
    const read = readSvg(file('<g id="cut"><path id="one" d="M 20 30 L 25 30"/></g>', root));
    const start = read.groups[0]?.paths[0]?.subpaths[0]?.pieces[0]?.[0];
    expect(start?.x).toBeCloseTo(x, 9);
    expect(start?.y).toBeCloseTo(y, 9);
  });

  it('reads lines, cubics and closing lines', () => {
    const read = readSvg(path('M 0 0 L 10 0 C 10 5 5 10 0 10 Z M 1.5 1 L 2 1.125'));
    const [loop, line] = read.groups[0]?.paths[0]?.subpaths ?? [];
    expect(loop?.closed).toBe(true);
    expect(loop?.pieces.map((piece) => piece.length)).toEqual([2, 4, 2]);
    expect(line).toEqual({
      closed: false,
      pieces: [
        [
          { x: 1.5, y: 1 },
          { x: 2, y: 1.125 },
        ],
      ],
    });
  });

  it.each([
    ['a relative command', path('m 0 0 L 1 1'), /"m"/u],
    ['an arc', path('M 0 0 A 1 1 0 0 0 2 2'), /"A"/u],
    ['four decimals', path('M 0 0 L 1.2345 1'), /1\.2345/u],
    ['an exponent', path('M 0 0 L 1e3 1'), /1e3/u],
    ['NaN', path('M 0 0 L NaN 1'), /NaN/u],
    ['minus zero', path('M 0 0 L -0 1'), /-0/u],
    ['numbers without a command', path('M 0 0 L 1 1 2 2'), /"2"/u],
    ['a path that draws nothing', path('M 0 0'), /draws nothing/u],
    ['a class', file('<g id="cut" class="x"/>'), /class/u],
    ['a style', file('<g id="cut" style="fill:none"/>'), /style/u],
    ['a transform', file('<g id="cut" transform="scale(2)"/>'), /transform/u],
    ['an element that is not plain', file('<rect width="1" height="1"/>'), /rect/u],
    ['a script', file('<script>1</script>'), /script/u],
    ['an id twice', file('<g id="cut"/><g id="cut"/>'), /twice/u],
    ['a group without an id', file('<g/>'), /no id/u],
    ['a colour by name', file('<g id="cut" stroke="red"/>'), /red/u],
    ['loose text', file('hello'), /loose text/u],
    ['a comment', file('<!-- hello -->'), /comment/u],
    ['a document type', `<!DOCTYPE svg>${file('')}`.replace(/<\?.*?\?>/u, ''), /document type/u],
    ['a size without a unit', file('', 'width="100" height="50" viewBox="0 0 100 50"'), /real length/u],
    ['no view', file('', 'width="100mm" height="50mm"'), /viewBox|plain number/u],
    ['a view of another shape', file('', 'width="100mm" height="50mm" viewBox="0 0 100 51"'), /disagree/u],
    ['broken XML', file('<g id="cut">'), /./u],
  ])('refuses %s', (_, text, complaint) => {
    expect(() => readSvg(text)).toThrow(complaint);
  });
});
