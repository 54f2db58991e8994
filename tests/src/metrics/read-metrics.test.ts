import { expect, test } from 'vitest';
import { readMetrics } from './read-metrics.ts';

const family = '# HELP tide_total Tides so far.\n# TYPE tide_total counter\n';

test('reads names, labels and values', () => {
  expect(readMetrics(`${family}tide_total{port="a \\"b\\"",day="1"} 3\n`)).toEqual([
    { name: 'tide_total', labels: { port: 'a \\"b\\"', day: '1' }, value: 3 },
  ]);
});

test.each([
  ['an unfinished line', `${family}tide_total 1`],
  ['a sample without a type', '# HELP tide_total Tides.\ntide_total 1\n'],
  ['a series twice', `${family}tide_total 1\ntide_total 2\n`],
  ['a family twice', `${family}${family}`],
  ['labels that do not end', `${family}tide_total{port="a} 1\n`],
  ['a value that is no number', `${family}tide_total high\n`],
  ['words', `${family}how high is the tide\n`],
])('refuses %s', (_, text) => {
  expect(() => readMetrics(text)).toThrow();
});
