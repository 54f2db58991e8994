import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../shared/geometry/area.ts';
import { boundsOf, centreOf } from '../../shared/geometry/bounds.ts';
import { isCurve } from '../../shared/geometry/contour.ts';
import { mm } from '../../shared/lengths/nanometres.ts';
import { PAGE, read, refusal, sizeOf, svg } from '../support/artwork.ts';
import { paintedArea, paperPieces } from '../support/paper-pieces.ts';
import { rasterOf } from '../support/raster.ts';

const square = '<rect x="10" y="20" width="30" height="40"/>';
const areaIn = (artwork: string): number => areaOf(read(artwork).shape) / 1e12;

describe('the size of an SVG file', () => {
  // 1 in = 2.54 cm = 25.4 mm = 96 px = 72 pt = 6 pc (CSS Values and Units 3, "Absolute Lengths")
  test.each([
    ['width="100mm" height="100mm" viewBox="0 0 100 100"', 30],
    ['width="10cm" height="10cm" viewBox="0 0 100 100"', 30],
    ['width="2in" height="2in" viewBox="0 0 100 100"', 0.3 * 50.8],
    ['width="72pt" height="72pt" viewBox="0 0 100 100"', 0.3 * 25.4],
    ['width="6pc" height="6pc" viewBox="0 0 100 100"', 0.3 * 25.4],
    ['width="96px" height="96px" viewBox="0 0 100 100"', 0.3 * 25.4],
    ['width="96" height="96" viewBox="0 0 100 100"', 0.3 * 25.4],
    ['width="96" height="96"', (30 / 96) * 25.4],
    ['width="100mm" viewBox="0 0 100 100"', 30],
    // all of the viewBox is shown: the smaller scale holds
    ['width="200mm" height="100mm" viewBox="0 0 100 100"', 30],
    ['width="100mm" height="100mm" viewBox="-50 -50 150 150"', 20],
  ])('%s', (attributes, width) => {
    const [across, along] = sizeOf(svg(square, attributes));
    expect(across).toBeCloseTo(width, 5);
    expect(along).toBeCloseTo((width * 4) / 3, 5);
  });

  test('has to be told where the file is silent, and where there is only path data', () => {
    expect(refusal(svg(square, ''))).toContain('nothing says how large');
    expect(refusal(svg(square, 'viewBox="0 0 100 100"'))).toContain('nothing says how large');
    expect(refusal('M0 0h30v40h-30z')).toContain('nothing says how large');
  });

  test('is what the spec asks for, in proportion and within both', () => {
    for (const artwork of [svg(square), svg(square, ''), 'M0 0h30v40h-30z', '\uFEFF  m5,5 h30 v40 h-30 z']) {
      expect(sizeOf(artwork, { width: mm(60) })).toEqual([60, 80]);
      expect(sizeOf(artwork, { height: mm(60) })).toEqual([45, 60]);
      expect(sizeOf(artwork, { width: mm(60), height: mm(60) })).toEqual([45, 60]);
    }
  });

  test('is asked of what is cut, not of lines without area', () => {
    expect(sizeOf('M0 0h30v40h-30z M0 0h300z', { width: mm(60) })).toEqual([60, 80]);
  });

  test('is refused beyond what can be cut', () => {
    expect(refusal('M0 0h3v4000h-3z', { width: mm(3) })).toContain('3 mm × 4000 mm');
    expect(refusal(svg('<rect width="0.1" height="0.1"/>'))).toContain('0.1 mm × 0.1 mm');
  });

  test('the middle of the bounds is the origin', () => {
    expect(centreOf(boundsOf(read(svg(square)).shape))).toEqual({ x: 0, y: 0 });
  });
});

describe('shapes', () => {
  test.each([
    ['<rect x="1" y="2" width="30" height="40"/>', 1200],
    // corners of a quarter of an ellipse each lose rx·ry·(1 − π/4)
    ['<rect width="30" height="40" rx="5"/>', 1200 - 4 * 25 * (1 - Math.PI / 4)],
    ['<rect width="30" height="40" rx="5" ry="10"/>', 1200 - 4 * 50 * (1 - Math.PI / 4)],
    ['<rect width="30" height="40" ry="10"/>', 1200 - 4 * 100 * (1 - Math.PI / 4)],
    ['<rect width="30" height="40" rx="99"/>', 1200 - 4 * 300 * (1 - Math.PI / 4)],
    ['<circle cx="50" cy="50" r="20"/>', Math.PI * 400],
    ['<ellipse cx="50" cy="50" rx="20" ry="10"/>', Math.PI * 200],
    ['<polygon points="0,0 30,0 30,40"/>', 600],
    ['<polyline points="0 0 30 0 30 40"/>', 600],
    ['<path d="M0 0L30 0 30 40"/>', 600],
    ['<path d="M0 0H30V40H0Z"/>', 1200],
    ['<path d="m10 10h30v40h-30zm5 5v30h20v-30z"/>', 600],
    ['<path d="M10 10h30v40h-30zm5 5h20v30h-20z"/>', 1200],
    ['<path fill-rule="evenodd" d="M10 10h30v40h-30zm5 5h20v30h-20z"/>', 600],
    ['<g fill-rule="evenodd"><path d="M10 10h30v40h-30zm5 5h20v30h-20z"/></g>', 600],
    ['<g fill-rule="evenodd"><path fill-rule="nonzero" d="M10 10h30v40h-30zm5 5h20v30h-20z"/></g>', 1200],
    // a cubic (0,0) (a,0) (a,h) (0,h) encloses 3/5·a·h, a parabola (0,0) (a,h/2) (0,h) a third of a·h
    ['<path d="M10 10C50 10 50 40 10 40Z"/>', 0.6 * 40 * 30],
    ['<path d="M10 10Q50 25 10 40Z"/>', (40 * 30) / 3],
    ['<path d="M10 10Q30 10 30 25T50 40L10 40Z"/>', 20 * 15 * (1 / 3) + 20 * 15 + 20 * 15 * (2 / 3)],
    ['<path d="M20 50A20 20 0 0 1 60 50Z"/>', Math.PI * 200],
    // what overlaps counts once
    ['<rect width="30" height="40"/><rect x="15" width="30" height="40"/>', 45 * 40],
    ['<g id="a"><g><rect width="30" height="40" fill="#123456" stroke="none"/></g></g>', 1200],
    [
      '<title>A boat</title><desc>by us</desc><metadata><x xmlns="urn:x">1</x></metadata><defs/><rect width="30" height="40"/>',
      1200,
    ],
  ])('%s', (inside, area) => {
    // arcs as cubics are up to 0.03 % too large
    expect(areaIn(svg(inside, `${PAGE} version="1.1"`)) / area).toBeCloseTo(1, 3);
  });

  test('an XML declaration, the usual DOCTYPE and comments are taken', () => {
    const head = '<?xml version="1.0" encoding="UTF-8" standalone="no"?><!-- a boat -->';
    const doctype =
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    expect(read(`${head}${doctype}${svg(square)}`).shape.length).toBe(1);
  });

  test('arcs and curves stay curves', () => {
    const { shape } = read(svg('<path d="M20 50A20 20 0 0 1 60 50Z"/>'));
    expect(shape[0]?.stretches.map(isCurve)).toEqual([true, true, false]);
  });

  test('path data takes a rule, a file does not', () => {
    const rings = 'M10 10h30v40h-30zm5 5h20v30h-20z';
    expect(areaOf(read(rings, { width: mm(30), fillRule: 'even-odd' }).shape) / 1e12).toBeCloseTo(600, 5);
    expect(areaOf(read(rings, { width: mm(30) }).shape) / 1e12).toBeCloseTo(1200, 5);
    expect(refusal(svg(square), { fillRule: 'nonzero' })).toContain('path data alone');
  });

  test('counters are bridged unless the spec says none', () => {
    const ring = svg('<path fill-rule="evenodd" d="M10 10h30v40h-30zm8 8h14v24h-14z"/>');
    const bridged = read(ring, { bridges: 'automatic' });
    expect([bridged.islands.length, bridged.bridges, paperPieces(bridged.shape)]).toEqual([0, 2, 1]);
    const loose = read(ring);
    expect([loose.islands.length, loose.bridges, paperPieces(loose.shape)]).toEqual([1, 0, 2]);
    expect(loose.islands[0]?.area).toBeCloseTo(14 * 24 * 1e12, -6);
  });
});

/* A renderer paints the file as it is; its pixels are compared with the area and the bounds of what was read. */
describe('transforms, as a renderer paints them', () => {
  const DPI = 127; // 5 pixels to the millimetre
  const painted = (file: string) => {
    const raster = rasterOf(file, DPI);
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let y = 0; y < raster.height; y++)
      for (let x = 0; x < raster.width; x++) {
        if (raster.painted(x, y) < 0.5) continue;
        [left, right, top, bottom] = [
          Math.min(left, x),
          Math.max(right, x + 1),
          Math.min(top, y),
          Math.max(bottom, y + 1),
        ];
      }
    return { area: paintedArea(raster, DPI), width: (right - left) / 5, height: (bottom - top) / 5 };
  };
  const inside = '<path fill-rule="evenodd" d="M-8-12C8-12 8-4 12 0A12 9 20 0 1-6 12Zm3 6h8l-2 9z"/>';

  const compare = (file: string) => {
    const { area, width, height } = painted(file);
    expect(areaIn(file) / area).toBeCloseTo(1, 2);
    const [across, along] = sizeOf(file);
    expect(Math.abs(across - width)).toBeLessThan(0.5);
    expect(Math.abs(along - height)).toBeLessThan(0.5);
  };

  test.each([
    'translate(50 50)',
    'translate(50)translate(0,50)',
    'translate(50, 50) scale(2)',
    'translate(50 50) scale(-1.5 0.7)',
    'translate(50 50) rotate(33)',
    'rotate(90 50 50) translate(50,50)',
    'translate(50 50) skewX(30)',
    'translate(50 50) skewY(-20) rotate(200)',
    'matrix(1.2 .4 -.3 1.1 50 48)',
    ' matrix( 1e0,0 0-1 , 50 50 ) , rotate(-15)',
  ])('%s', (transform) => {
    compare(svg(`<g transform="${transform}">${inside}</g>`));
  });

  test('in each other, on groups and shapes', () => {
    compare(
      svg(
        `<g transform="translate(50 50)"><g transform="rotate(20)"><g transform="scale(1.4 .8)">${inside}<circle r="3" cx="20" transform="skewX(40) translate(0 5)"/></g></g></g>`,
      ),
    );
  });

  test('any that keep the shape on the page', () => {
    const angle = fc.integer({ min: -180, max: 180 });
    const factor = fc.integer({ min: 5, max: 20 }).map((tenths) => tenths / 10);
    const skew = fc.integer({ min: -35, max: 35 });
    fc.assert(
      fc.property(angle, factor, factor, skew, fc.boolean(), (degrees, across, along, slant, mirrored) => {
        compare(
          svg(
            `<g transform="translate(50 50) rotate(${degrees}) skewX(${slant}) scale(${mirrored ? -across : across} ${along})">${inside}</g>`,
          ),
        );
      }),
      { numRuns: 25 },
    );
  });

  test('the comparison sees a transform that was not done', () => {
    const { area } = painted(svg(`<g transform="translate(50 50) scale(1.1)">${inside}</g>`));
    expect(areaIn(svg(`<g transform="translate(50 50)">${inside}</g>`)) / area).not.toBeCloseTo(1, 2);
  });
});
