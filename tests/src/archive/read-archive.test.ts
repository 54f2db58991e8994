import { beforeAll, describe, expect, test } from 'vitest';
import { readArchive } from '../../../src/archive/read-archive.ts';
import { splitLines } from '../../../src/archive/split-lines.ts';
import { sqliteRecords } from '../members/records-place.ts';
import { fill } from './archive-contract.ts';
import { exported, type Line, linesOf, sealed, sourceOf } from './archive-text.ts';

const mostBodyBytes = 256 * 1024;

async function read(text: string, most = mostBodyBytes): Promise<number> {
  let lines = 0;
  for await (const _ of readArchive(sourceOf(text)(), most)) lines++;
  return lines;
}

let good: Line[];
beforeAll(async () => {
  const place = await sqliteRecords();
  const records = place.open();
  await fill(records);
  good = linesOf(await exported(records.archive)).slice(0, -1);
  await place.discard();
});

/** The lines with one change, under a right end. */
function changed(change: (lines: Line[]) => void): string {
  const lines = structuredClone(good);
  change(lines);
  return sealed(lines);
}

const at = (lines: readonly Line[], kind: string, nth = 0) => {
  const found = lines.flatMap(({ line }, index) => (line === kind ? [index] : []))[nth];
  if (found === undefined) throw new Error(`there is no ${kind}`);
  return found;
};

const alter = (kind: string, members: Line, nth = 0) =>
  changed((lines) => Object.assign(lines[at(lines, kind, nth)] ?? {}, members));

const drop = (kind: string, nth = 0) => changed((lines) => lines.splice(at(lines, kind, nth), 1));

const move = (kind: string, to: (lines: readonly Line[]) => number, nth = 0) =>
  changed((lines) => lines.splice(to(lines), 0, ...lines.splice(at(lines, kind, nth), 1)));

test('a whole and sound archive is read to its end', async () => {
  expect(await read(sealed(good))).toBe(good.length + 1);
});

describe('an archive is refused', () => {
  test.each<readonly [string, () => string, RegExp]>([
    ['that is empty', () => '', /^Line 1 of the file: is missing: the file has no end/],
    ['that is something else', () => 'a shopping list\n', /^Line 1 .*is not JSON/],
    ['that is other JSON', () => '{"tide":"low"}\n', /^Line 1 /],
    ['of another service', () => alter('archive', { of: 'tide' }), /^Line 1 /],
    [
      'of a later form',
      () => alter('archive', { format: 2 }),
      /has the form 2, which this version cannot read/,
    ],
    ['without its beginning', () => drop('archive'), /^Line 1 .*must say that this is an archive/],
    ['within an archive', () => changed((lines) => lines.push({ ...lines[0] })), /archive within an archive/],
    ['with a member unknown here', () => alter('member', { admin: true }), /^Line 2 .*"admin" is not known/],
    ['with a line unknown here', () => alter('member', { line: 'user' }), /^Line 2 .*"user" is not known/],
    ['with a name that is none', () => alter('member', { name: '../x' }), /^Line 2 .*name/],
    ['with a member called twice', () => alter('member', { name: 'Ada' }, 1), /not in the order of names/],
    ['with a member of home’s id', () => alter('member', { id: 'home' }), /has an id that is taken/],
    ['with a hash that is none', () => alter('token', { secretHash: 'abc' }), /^Line 3 .*secretHash/],
    ['with a scope that is none', () => alter('token', { scopes: ['root'] }), /"root" is not known/],
    ['with a token without scopes', () => alter('token', { scopes: [] }), /^Line 3 .*scopes/],
    ['with a scope twice', () => alter('token', { scopes: ['read', 'read'] }), /says a scope twice/],
    ['with a token of nobody', () => move('token', () => 1), /follows no member/],
    ['with a token among things', () => move('token', (lines) => at(lines, 'thing')), /follows no member/],
    [
      'with a member among things',
      () => changed((lines) => lines.splice(at(lines, 'version') + 1, 0, { ...lines[1] })),
      /among things/,
    ],
    ['with a time that is none', () => alter('version', { changed: 'noon' }), /changed/],
    ['with a kind that is none', () => alter('shelf', { kind: 'shoes' }), /"shoes" is not known/],
    [
      'with a shelf twice',
      () => changed((lines) => lines.splice(at(lines, 'shelf', 1), 0, { ...lines[at(lines, 'shelf')] })),
      /order of owners/,
    ],
    ['with a thing on no shelf', () => drop('shelf'), /follows no shelf/],
    ['with a thing of no version', () => drop('version'), /comes before version/],
    ['with a version of nothing', () => drop('thing'), /follows nothing/],
    ['with a version too many', () => alter('thing', { version: 1 }, 1), /order of versions/],
    [
      'with an older version of what has none',
      () =>
        changed((lines) => {
          const index = at(lines, 'version', 1 + 39);
          const later = lines[index] ?? {};
          Object.assign(lines[index - 1] ?? {}, { version: 2 });
          lines.splice(index + 1, 0, { ...later, version: 2 });
        }),
      /older version, which only designs have/,
    ],
    [
      'with a share link of a paper',
      () =>
        alter(
          'thing',
          { shares: [{ id: 'x', secretHash: 'a'.repeat(64), created: '2025-11-03T18:00:00.000Z' }] },
          5,
        ),
      /share links, which only designs have/,
    ],
    [
      'with a share link twice',
      () =>
        changed((lines) => {
          const thing = lines.find(({ shares }) => shares !== undefined) as { shares: Line[] };
          thing.shares.push({ ...thing.shares[0] });
        }),
      /a share link that is taken/,
    ],
    ['with an act twice', () => changed((lines) => lines.push({ ...lines.at(-1) })), /order of numbers/],
    ['with an act that is none', () => alter('act', { act: 'tea-made' }), /"tea-made" is not known/],
    [
      'with a thing after the acts',
      () => move('shelf', (lines) => lines.length - 1),
      /after the audit log|follows no shelf/,
    ],
    ['that goes on after its end', () => `${sealed(good)}${JSON.stringify(good[1])}\n`, /follows the end/],
    [
      'without a body',
      () => changed((lines) => delete lines[at(lines, 'version')]?.body),
      /body: is missing/,
    ],
    [
      'with a name that would reach a prototype',
      () => sealed(good).replace('"body":null', '"body":{"__proto__":1}'),
      /"__proto__" is not allowed/,
    ],
    [
      'with a body that is nested too deep',
      () => sealed(good).replace('"body":null', `"body":${'['.repeat(70)}${']'.repeat(70)}`),
      /nested more than/,
    ],
    [
      'with a body that is nested without bounds',
      () => sealed(good).replace('"body":null', `"body":${'['.repeat(200_000)}${']'.repeat(200_000)}`),
      /nested too deep/,
    ],
    ['with a line without bounds', () => `{"line":"${'x'.repeat(1024 * 1024)}`, /longer than 1 MiB/],
    [
      'with a wrong count',
      () => sealed(good).replace(/"lines":\d+/, '"lines":3'),
      /3 lines should stand before it/,
    ],
    [
      'with a wrong hash',
      () => sealed(good).replace(/"sha256":"[\da-f]{64}"/, `"sha256":"${'0'.repeat(64)}"`),
      /its hash differs/,
    ],
    ['with a changed letter', () => sealed(good).replace('paper 3', 'paper 4'), /^Line \d+/],
    ['that is cut off', () => sealed(good).slice(0, -1), /is cut off/],
    [
      'that ends too soon',
      () => `${sealed(good).trimEnd().split('\n').slice(0, -1).join('\n')}\n`,
      /has no end/,
    ],
    ['in another encoding', () => '\ud800\n', /^Line 1/],
  ])('%s', async (_name, text, reason) => {
    await expect(read(text())).rejects.toThrow(reason);
  });

  test('with a body over the limit', async () => {
    expect(await read(sealed(good), 40)).toBeGreaterThan(5);
    await expect(read(sealed(good), 20)).rejects.toThrow('more than 20 bytes');
  });
});

describe('splitLines', () => {
  const split = async (text: string, pieceBytes: number) => {
    const lines: string[] = [];
    for await (const line of splitLines(sourceOf(text, pieceBytes)())) lines.push(line.toString());
    return lines;
  };

  test.each([1, 2, 3, 5, 100])('gives the same lines from pieces of %i bytes', async (pieceBytes) => {
    expect(await split('eins\n\nzwölf\n', pieceBytes)).toEqual(['eins', '', 'zwölf']);
  });

  test('refuses what no newline ends', async () => {
    await expect(split('a\nb', 2)).rejects.toThrow('Line 2 of the file: is cut off');
    expect(await split('', 2)).toEqual([]);
  });
});
