import { describe, expect, test } from 'vitest';
import { guideOf } from '../../shared/guide/guide-of.ts';
import { cautions } from '../../shared/plan-reply/cautions.ts';
import { guideStyle } from '../../src/guide/guide-style.ts';
import { guideContentPolicy, writeGuideHtml } from '../../src/guide/write-html.ts';
import { build } from '../src/build.ts';
import { everyKind, foldedFrom } from '../support/sleeves.ts';

const about = {
  title: 'Lamp room <folder> & "friends"',
  notes: 'First.\nSecond.',
  credit: 'The Thursday craft evening',
  licence: 'CC-BY-4.0',
};

const textOf = (html: string) => html.replaceAll(/<svg[\s\S]*?<\/svg>/gu, '').replaceAll(/<[^>]*>/gu, ' ');

describe.each(everyKind)('the maker’s sheet of %j', (spec) => {
  const folded = foldedFrom(spec);

  test('has a picture for every step, and every section once', () => {
    const guide = guideOf(folded, { machine: 'yes', print: 'standard', shows: 'outside' });
    const steps = guide.sections
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === 'steps' ? block.steps : []));
    expect(steps).toHaveLength(folded.program.steps.length);
    const ids = guide.sections.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.slice(0, 3)).toEqual(['sizes', 'needs', 'parts']);
    expect(ids).toContain('safety');
  });

  test('as a page has unique ids, links that lead somewhere, and every caution', () => {
    const html = writeGuideHtml(
      guideOf(folded, { machine: 'yes', print: 'standard', shows: 'outside' }, about),
      'standard',
    );
    const ids = [...html.matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, target] of html.matchAll(/href="#([^"]+)"/gu)) expect(ids).toContain(target);
    for (const [, list = ''] of html.matchAll(/aria-labelledby="([^"]+)"/gu))
      for (const id of list.split(' ')) expect(ids).toContain(id);
    for (const caution of cautions) expect(textOf(html)).toContain(caution);
  });
});

describe('a guide', () => {
  const [spec = {}] = everyKind;
  const folded = foldedFrom(spec);

  test('writes what a design says as text, never as markup', () => {
    const html = writeGuideHtml(
      guideOf(folded, { machine: 'yes', print: 'standard', shows: 'outside' }, about),
      'standard',
    );
    expect(html).toContain('<h1>Lamp room &lt;folder&gt; &amp; &quot;friends&quot;</h1>');
    expect(html).not.toContain('<folder>');
    for (const words of ['First.', 'Second.', 'The Thursday craft evening', 'CC-BY-4.0'])
      expect(textOf(html)).toContain(words);
  });

  test('for hand tools speaks of no machine’s work', () => {
    const ids = guideOf(folded, { machine: 'no', print: 'standard', shows: 'outside' }).sections.map(
      ({ id }) => id,
    );
    expect(ids).not.toContain('machine');
    expect(
      guideOf(folded, { machine: 'yes', print: 'standard', shows: 'outside' }).sections.map(({ id }) => id),
    ).toContain('machine');
  });

  test('sent as a page may use its own style alone: the policy names that style’s digest', async () => {
    const app = await build();
    const reply = await app.inject({ method: 'POST', url: '/v1/folders/guide', payload: spec });
    expect(reply.statusCode).toBe(200);
    expect(reply.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(reply.headers['content-security-policy']).toBe(guideContentPolicy);
    expect(reply.body.match(/<style>([\s\S]*?)<\/style>/u)?.[1]).toBe(guideStyle);
    expect(reply.body).not.toMatch(/<script|style="|onload|https?:\/\/(?!www\.w3\.org)/u);
  });
});

test('a box lies inside up until it is set up; from then on no face is', () => {
  const box = foldedFrom({ style: 'tuck-box', contents: { item: { size: 'iso-a6' }, perPocket: 24 } });
  const steps = guideOf(box, { machine: 'yes', print: 'standard', shows: 'outside' })
    .sections.flatMap(({ blocks }) => blocks)
    .flatMap((block) => (block.kind === 'steps' ? block.steps : []));
  const stands = box.program.steps.findIndex(({ kind }) => kind === 'stand');
  expect(stands).toBeGreaterThan(0);
  expect(steps.map(({ faceUp }) => faceUp)).toEqual(
    steps.map((_, index) => (index < stands ? 'Inside face up' : undefined)),
  );
});

describe('the scores that a maker measures', () => {
  const scores = (raw: object) =>
    guideOf(foldedFrom(raw), { machine: 'yes', print: 'standard', shows: 'outside' }).sections.find(
      ({ id }) => id === 'scores',
    );

  test.each(everyKind)('are the folder’s own, whatever the tool takes away: %j', (spec) => {
    const convention = { outline: 'always' };
    const cutter = { width: '600 mm', height: '600 mm' };
    const plain = scores({ ...spec, convention, cutter });
    expect(scores({ ...spec, convention, cutter: { ...cutter, kerf: '0.4 mm' } })).toEqual(plain);
    expect(JSON.stringify(plain)).toContain('"edge to edge"');
  });

  // the tab stands 15 mm before the back, which is 111 mm wide, and the bottom tab keeps 2 mm from both of its ends
  test('say from which edge a short one begins, as the sheet lies by then', () => {
    const short = scores({
      style: 'slip-sleeve',
      contents: { item: { size: 'iso-a6' }, perPocket: 3 },
      stock: { size: 'iso-a4' },
    });
    const tables = (short?.blocks ?? []).flatMap((block) => (block.kind === 'table' ? [block] : []));
    expect(tables.map(({ head }) => head.find((title) => title.startsWith('From where')))).toEqual([
      'From where to where, from the top edge',
      'From where to where, from the left edge, now nearest to you',
    ]);
    expect(tables[1]?.rows[0]).toContain('17 mm to 124 mm');
  });
});
