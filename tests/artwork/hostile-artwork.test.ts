import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { artworkSpec, MOST_CHARACTERS } from '../../shared/artwork/artwork-spec.ts';
import { readArtwork } from '../../shared/artwork/read-artwork.ts';
import { PAGE, read, refusal, svg } from '../support/artwork.ts';
import { CALIPER } from '../support/fonts.ts';

/* Files that want more than to be drawn. Each is refused by name, with a remedy; nothing is fetched, expanded or run. */

const rect = '<rect x="10" y="10" width="20" height="20"/>';
const laughs = Array.from({ length: 9 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join('');

test('the file that all of these are made from is read', () => {
  expect(read(svg(rect)).shape.length).toBe(1);
});

describe('uploads that are refused', () => {
  test.each<[string, string, RegExp]>([
    [
      'a billion laughs',
      `<!DOCTYPE svg [<!ENTITY l0 "ha">${laughs}]>${svg('<title>&l9;</title>')}`,
      /DOCTYPE/u,
    ],
    [
      'a large entity',
      `<!DOCTYPE svg [<!ENTITY a "${'a'.repeat(50_000)}">]>${svg(`<desc>${'&a;'.repeat(9_000)}</desc>`)}`,
      /DOCTYPE/u,
    ],
    [
      'an external entity',
      `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>${svg('<desc>&x;</desc>')}`,
      /DOCTYPE/u,
    ],
    [
      'a parameter entity',
      `<!DOCTYPE svg [<!ENTITY % x SYSTEM "http://127.0.0.1/x"> %x;]>${svg(rect)}`,
      /DOCTYPE/u,
    ],
    ['a DTD from elsewhere', `<!DOCTYPE svg SYSTEM "http://127.0.0.1/evil.dtd">${svg(rect)}`, /DOCTYPE/u],
    ['an entity that nobody declared', svg('<path d="&path;"/>'), /not sound XML: undefined entity/u],
    [
      'a style sheet by instruction',
      `<?xml-stylesheet href="http://127.0.0.1/a.css"?>${svg(rect)}`,
      /instruction "xml-stylesheet"/u,
    ],
    ['a program by instruction', `${svg(`<?php echo 1 ?>${rect}`)}`, /instruction "php"/u],
    ['a script', svg('<script>fetch("http://127.0.0.1")</script>'), /<script>.*never run/u],
    ['a script in metadata', svg(`<metadata><script>1</script></metadata>${rect}`), /<script>.*never run/u],
    ['an event', svg('<rect width="9" height="9" onclick="alert(1)"/>'), /"onclick".*never run/u],
    ['an event on the root', svg(rect, `${PAGE} onload="alert(1)"`), /"onload".*never run/u],
    [
      'an import in CSS',
      svg('<style>@import url("http://127.0.0.1/a.css");</style>'),
      /<style>.*style sheets/u,
    ],
    [
      'a style attribute',
      svg('<rect width="9" height="9" style="fill:url(http://127.0.0.1/)"/>'),
      /"style"/u,
    ],
    ['a class', svg('<rect width="9" height="9" class="a"/>'), /"class"/u],
    ['a picture', svg('<image href="http://127.0.0.1/a.png" width="9" height="9"/>'), /<image>/u],
    [
      'a picture as data',
      svg('<image href="data:image/png;base64,iVBORw0KGgo=" width="9" height="9"/>'),
      /<image>/u,
    ],
    ['a copy by reference', svg('<use href="#a"/>'), /<use>.*not followed/u],
    ['a copy by reference from elsewhere', svg('<use href="http://127.0.0.1/a.svg#b"/>'), /<use>/u],
    [
      'an old link',
      svg(
        '<rect xlink:href="#a" width="9" height="9"/>',
        `${PAGE} xmlns:xlink="http://www.w3.org/1999/xlink"`,
      ),
      /"xlink:href".*not followed/u,
    ],
    [
      'a prefix for a link that is not declared',
      svg('<rect xlink:href="#a" width="9" height="9"/>'),
      /not sound XML/u,
    ],
    ['a base', svg(`<g xml:base="http://127.0.0.1/">${rect}</g>`), /"xml:base".*not followed/u],
    ['a link', svg(`<a href="javascript:alert(1)">${rect}</a>`), /<a>.*not followed/u],
    [
      'a page inside',
      svg('<foreignObject><body xmlns="http://www.w3.org/1999/xhtml"/></foreignObject>'),
      /<foreignObject>/u,
    ],
    ['another drawing inside', svg(svg(rect)), /<svg>.*drawing in the drawing/u],
    ['a clip', svg(`<g clip-path="url(#c)">${rect}</g>`), /"clip-path"/u],
    ['a mask', svg(`<mask id="m">${rect}</mask>`), /<mask>/u],
    ['a filter', svg(`<g filter="url(#f)">${rect}</g>`), /"filter"/u],
    [
      'a fill from elsewhere',
      svg('<rect width="9" height="9" fill="url(http://127.0.0.1/a#b)"/>'),
      /fill of <rect>/u,
    ],
    [
      'an animation',
      svg('<rect width="9" height="9"><animate attributeName="x" to="5"/></rect>'),
      /<animate>/u,
    ],
    ['text', svg('<text x="9" y="9">Hello</text>'), /<text>.*no fonts/u],
    ['a switch', svg(`<switch>${rect}</switch>`), /<switch>/u],
    ['groups a thousand deep', svg(`${'<g>'.repeat(1_000)}${rect}${'</g>'.repeat(1_000)}`), /32 deep/u],
    ['ten thousand elements', svg('<g/>'.repeat(10_000)), /more than 2000 elements/u],
    ['another namespace', `<svg xmlns="http://www.w3.org/1999/xhtml">${rect}</svg>`, /begins with <svg>/u],
    ['no namespace', `<svg>${rect}</svg>`, /begins with <svg>/u],
    ['another language', '<html xmlns="http://www.w3.org/1999/xhtml"/>', /begins with <html>/u],
    ['an element of another namespace', svg(`<x:rect xmlns:x="urn:x"/>${rect}`), /<x:rect>.*namespace/u],
    ['a drawing that ends early', svg(rect).slice(0, -8), /not sound XML/u],
    ['a tag that ends early', `${svg(rect).slice(0, -10)}`, /not sound XML/u],
    ['tags that cross', svg('<g><path d="M0 0L9 9 0 9z"></g></path>'), /not sound XML/u],
    ['an attribute twice', svg('<rect width="9" width="99" height="9"/>'), /not sound XML/u],
    ['two roots', `${svg(rect)}${svg(rect)}`, /not sound XML/u],
    ['a NUL', svg('<path d="M0 0\u0000L9 9 0 9"/>'), /not sound XML/u],
    ['a NUL by number', svg('<path d="M0 0&#0;L9 9 0 9"/>'), /not sound XML/u],
    ['half a surrogate pair', svg('<desc>\ud800</desc>'), /not sound XML/u],
    ['CDATA', svg(`<![CDATA[${rect}]]>`), /CDATA/u],
    ['words between shapes', svg(`${rect}hello`), /text between the shapes/u],
    ['NaN', svg('<rect width="NaN" height="9"/>'), /not a number/u],
    ['infinity', svg('<path d="M0 0L1e999 0 9 9z"/>'), /number infinity/u],
    ['a huge number', svg('<path d="M0 0L1e300 0 9 9z"/>'), /number 1\.00e\+300/u],
    ['a huge circle', svg('<circle r="1e12"/>'), /number 1\.00e\+12/u],
    [
      'a transform to far away',
      svg(`<g transform="scale(1e6)"><g transform="scale(1e6)">${rect}</g></g>`),
      /under its transforms/u,
    ],
    [
      'a transform by a program',
      svg(`<g transform="rotate(expression(1))">${rect}</g>`),
      /the transform of <g>/u,
    ],
    [
      'a transform without end',
      svg(`<g transform="${'scale(1)'.repeat(100)}">${rect}</g>`),
      /the transform of <g>/u,
    ],
    ['a percentage', svg('<rect width="50%" height="9"/>'), /not a number/u],
    ['a negative radius', svg('<circle r="-5"/>'), /negative/u],
    ['broken path data', svg('<path d="M0 0L10 10 Q"/>'), /not path data/u],
    ['path data with more than commands', svg('<path d="M0 0;alert(1)"/>'), /not path data/u],
    ['path data that does not start', svg('<path d="L10 10 0 10"/>'), /not path data/u],
    ['points without an end', svg('<polygon points="0 0 10 0 10"/>'), /x without a y/u],
    ['a viewBox of nothing', svg(rect, 'viewBox="0 0 0 0"'), /viewBox/u],
    ['a size in ems', svg(rect, 'width="10em" height="10em"'), /width of the <svg>/u],
    ['parts beyond the page', svg('<rect x="90" width="90" height="9"/>'), /outside the page/u],
    ['an invisible shape', svg('<rect width="9" height="9" fill="none"/>'), /no fill/u],
    ['a hidden shape', svg('<rect width="9" height="9" display="none"/>'), /"display"/u],
    ['a white shape', svg(`${rect}<circle r="5" cx="20" cy="20" fill="#FFF"/>`), /is white/u],
    ['a stroke', svg('<rect width="9" height="9" stroke="black"/>'), /has a stroke/u],
    ['a line', svg('<line x1="0" y1="0" x2="9" y2="9"/>'), /<line>/u],
    ['a shape in a shape', svg(`<rect width="9" height="9">${rect}</rect>`), /stands inside <rect>/u],
    ['shapes kept for later', svg(`<defs>${rect}</defs>`), /in <defs>/u],
    ['nothing', svg(''), /no shapes/u],
    ['shapes without area', svg('<path d="M0 0L50 50"/>'), /0 mm|no area|mm ×/u],
    ['words', 'a drawing of a boat', /neither SVG nor path data/u],
    ['a member of every object', svg('<rect constructor="1" width="9" height="9"/>'), /"constructor"/u],
    ['the prototype', svg('<rect __proto__="1" width="9" height="9"/>'), /"__proto__"/u],
  ])('%s', (_, artwork, reason) => {
    expect(refusal(artwork)).toMatch(/^artwork: /u);
    expect(refusal(artwork)).toMatch(reason);
  });
});

describe('more work than a drawing should make', () => {
  const line = (count: number, point: (i: number) => string) =>
    `M${Array.from({ length: count }, (_, i) => point(i)).join('L')}Z`;
  const random = ((seed) => () => {
    seed = (seed * 16807) % 2147483647;
    return (seed / 2147483647) * 100;
  })(20261125);

  test.each<[string, string, RegExp]>([
    [
      'a star that crosses itself a million times',
      line(
        3_000,
        (i) => `${(50 + 49 * Math.cos(i * 2.9)).toFixed(2)} ${(50 + 49 * Math.sin(i * 2.9)).toFixed(2)}`,
      ),
      /cross more than 5000 times/u,
    ],
    [
      'a scribble',
      `M0 0C${Array.from({ length: 1_800 }, () => random().toFixed(1)).join(' ')}z`,
      /cross more than 5000 times|straight parts/u,
    ],
    [
      'ten thousand specks',
      Array.from({ length: 10_000 }, (_, i) => `M${i % 100} ${Math.floor(i / 100)}h.5v.5z`).join(''),
      /more than 2000 closed lines/u,
    ],
    [
      'long lines side by side',
      line(12_000, (i) => `${i % 2 ? 99 : 1} ${(i / 121).toFixed(3)}`),
      /long lines beside one another/u,
    ],
    [
      'curves without end',
      Array.from({ length: 1_900 }, (_, i) => `M${i % 40} ${i % 47}a30 30 0 0 1 60 0a30 30 0 0 1-60 0`).join(
        '',
      ),
      /straight parts|crosses|lines/u,
    ],
  ])('%s', (_, artwork, reason) => {
    expect(refusal(artwork, { width: 300e6 })).toMatch(reason);
  });

  test('the schema bounds the text', () => {
    expect(artworkSpec.safeParse({ artwork: 'M'.repeat(MOST_CHARACTERS + 1) }).success).toBe(false);
    expect(artworkSpec.safeParse({ artwork: 'M'.repeat(MOST_CHARACTERS) }).success).toBe(true);
    expect(artworkSpec.safeParse({ artwork: 'M0 0', href: 'x' }).success).toBe(false);
    expect(artworkSpec.safeParse({ artwork: '' }).success).toBe(false);
  });
});

describe('anything at all', () => {
  const pieces = fc.constantFrom(
    ...[
      '<',
      '>',
      '/>',
      '<g',
      '<svg xmlns="http://www.w3.org/2000/svg"',
      '</g>',
      '<path d="',
      '"',
      'M0 0',
      'L9 9',
      'a',
      '1 2',
    ],
    ...[
      '&amp;',
      '&#x41;',
      '<!--',
      '-->',
      '<![CDATA[',
      ']]>',
      ' transform="',
      'rotate(',
      ')',
      'C',
      'A1 1 0 0 1 5 5',
      'z',
      '\u0000',
      '1e999',
    ],
  );

  test('is read or refused, and never throws', () => {
    const fates = { read: 0, refused: 0 };
    const look = (artwork: string) => {
      const result = readArtwork({ artwork, width: 50e6 }, CALIPER);
      fates[result.ok ? 'read' : 'refused']++;
      if (!result.ok)
        expect(result.faults.every(({ message, remedy }) => message !== '' && remedy !== '')).toBe(true);
    };
    fc.assert(
      fc.property(fc.array(pieces, { minLength: 1, maxLength: 30 }), (parts) => look(parts.join(''))),
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (parts) => look(svg(`${rect}${parts.join('')}`))),
    );
    const command = fc.tuple(
      fc.constantFrom(...'MLHVCSQTAZmlhvcsqtaz'),
      fc.array(fc.integer({ min: -20, max: 50 }), { maxLength: 7 }),
    );
    fc.assert(
      fc.property(fc.array(command, { maxLength: 12 }), (commands) =>
        look(`M5 5L20 7 9 30z${commands.map(([name, numbers]) => name + numbers.join(' ')).join('')}`),
      ),
    );
    expect(fates.read).toBeGreaterThan(5);
    expect(fates.refused).toBeGreaterThan(50);
  });
});
