import { expect, test } from 'vitest';
import { flatScene } from '../../shared/views/flat-scene.ts';
import { plainMarks } from '../../shared/views/move-marks.ts';
import { whatIsSeen } from '../../shared/views/what-is-seen.ts';
import { easySleeve, foldedFrom } from '../support/sleeves.ts';

const room = { width: 200, height: 200 };

function told(stock: object) {
  const folded = foldedFrom({ ...easySleeve, stock: { size: 'iso-a2', ...stock } });
  const views = ['outside', 'inside'] as const;
  const arrows = views.flatMap((view) =>
    plainMarks(flatScene(folded, view, room).marks).flatMap((mark) =>
      mark.kind === 'arrow' && mark.arrow === 'print' ? [mark.paper] : [],
    ),
  );
  const words = views.map((view) => whatIsSeen(folded, view)).join(' ');
  return { faces: new Set(arrows), words: words.split('. ') };
}

test('of a one-way paper nothing is said of the inside’s print while nobody said how it lies', () => {
  const { faces, words } = told({ oneWay: true });
  expect(faces).toEqual(new Set(['outside']));
  const inside = words.filter((sentence) => sentence.includes('inside face'));
  expect(inside.length).toBeGreaterThan(0);
  for (const sentence of inside) expect(sentence).not.toContain('print');
  for (const sentence of words.filter((one) => one.includes('outside face')))
    expect(sentence).toContain('print');
});

test.each(['same-way', 'head-to-foot'])('and with prints that lie %s it is', (printPair) => {
  const { faces, words } = told({ oneWay: true, printPair });
  expect(faces).toEqual(new Set(['outside', 'inside']));
  for (const sentence of words) expect(sentence).toContain('print');
});
