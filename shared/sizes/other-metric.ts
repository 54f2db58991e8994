import { metric, PWG, type Size } from './size.ts';

/** Metric sizes outside the ISO series. */
export const otherMetric: readonly Size[] = [
  {
    id: 'din-e4',
    title: 'DIN E4 envelope',
    kinds: ['envelope'],
    ...metric(280, 400),
    source: 'DIN 680',
    authority: 'standard',
  },
  {
    id: 'jis-b5',
    title: 'JIS B5, not ISO B5',
    kinds: ['sheet'],
    ...metric(182, 257),
    source: PWG,
    authority: 'standard',
  },
  {
    id: 'metric-italian',
    title: 'Italian envelope',
    kinds: ['envelope'],
    ...metric(110, 230),
    source: PWG,
    authority: 'standard',
  },
  {
    id: 'metric-invite',
    title: 'square invitation envelope, 220 mm',
    kinds: ['envelope'],
    ...metric(220, 220),
    source: PWG,
    authority: 'standard',
  },
];
