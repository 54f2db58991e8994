import type { Examples } from './example.ts';

/** Of the operations that measure what a fold takes from a panel. */
export const calibrationExamples: Examples = {
  drawCalibrationStrip: [
    {
      name: 'usual-strip',
      summary: 'Craft evening: a strip of 220 mm with ten scores',
      body: { length: '220 mm' },
    },
    {
      name: 'strip-in-inches',
      summary: 'Craft evening: a narrow strip in inches, scores drawn as for the folder itself',
      body: { units: 'in', length: 9, width: 1, scores: 8, convention: { score: { inset: '1/64 in' } } },
      show: 'none',
    },
  ],
  measureFoldFactor: [
    {
      name: 'lamp-room-blue',
      summary: 'The strip of Lamp room blue, 0.30 mm thick, folded and measured panel by panel',
      body: { length: '220 mm', measured: '217.9 mm', caliper: '0.30 mm', scores: 10 },
    },
    {
      name: 'measured-too-long',
      summary: 'A slip of the ruler: the folded panels together cannot be longer than the strip',
      body: { units: 'mm', length: 220, measured: 223, caliper: 0.3, scores: 10 },
    },
  ],
};
