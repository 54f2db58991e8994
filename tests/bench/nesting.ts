import { parseArgs } from 'node:util';
import { highsSolver } from '../../src/nesting/highs-solver.ts';
import { kitNumber } from '../support/kits.ts';
import { median } from './median.ts';
import { measureClasses } from './nesting-classes.ts';
import { growthOf, measureGrowth } from './nesting-growth.ts';
import { compareKit } from './nesting-kits.ts';
import { percent, textTable, times } from './text-table.ts';

/*
 * npm run bench:nesting -- [--kits N] [--rounds N]
 * Nests random kits beside packers of other authors, then kits for classes, and shows how the cost grows with the number of
 * pieces. It fails when
 * a kit takes more sheets, or a longer strip, than with one of the others.
 */

const { values } = parseArgs({
  options: { kits: { type: 'string', default: '200' }, rounds: { type: 'string', default: '3' } },
});
const print = (text: string) => process.stdout.write(text);

const solve = await highsSolver();
const kits = Array.from({ length: Number(values.kits) }, (_, number) =>
  compareKit(kitNumber(number), solve, { packings: 1000 }),
);
const share = (test: (kit: (typeof kits)[number]) => boolean) =>
  percent(kits.filter(test).length / kits.length);
const total = (count: (kit: (typeof kits)[number]) => number) =>
  kits.reduce((sum, kit) => sum + count(kit), 0);

print(`${kits.length} random kits\n`);
print(
  textTable([
    ['', 'fewer', 'as many', 'more', 'altogether'],
    [
      'sheets beside maxrects-packer',
      share(({ sheets, byMaxRects }) => sheets < byMaxRects),
      share(({ sheets, byMaxRects }) => sheets === byMaxRects),
      share(({ sheets, byMaxRects }) => sheets > byMaxRects),
      `${total(({ sheets }) => sheets)} beside ${total(({ byMaxRects }) => byMaxRects)}`,
    ],
    [
      'length of a strip beside potpack',
      share(({ height, byPotpack }) => height < byPotpack),
      share(({ height, byPotpack }) => height === byPotpack),
      share(({ height, byPotpack }) => height > byPotpack),
      `${times(median(kits.map(({ height, byPotpack }) => height / byPotpack)))} in the median`,
    ],
  ]),
);
print(
  `  proved to be the fewest: ${share(({ proved }) => proved)}; bound ${total(({ bound }) => bound)} sheets\n`,
);
print(
  `  time: ${median(kits.map(({ ms }) => ms)).toFixed(0)} ms in the median, ${Math.max(...kits.map(({ ms }) => ms)).toFixed(0)} ms at most\n`,
);

for (const [name, classes] of Object.entries(measureClasses(solve))) {
  print(`\nfor a class: ${name}\n`);
  print(
    textTable([
      ['kits', 'on', 'pieces', 'sheets', 'bound', 'apart', 'time'],
      ...classes.map(({ kits, on, pieces, sheets, bound, ms }) => [
        `${kits}`,
        on,
        `${pieces}`,
        `${sheets}`,
        `${bound}`,
        percent(sheets / bound - 1),
        `${ms.toFixed(0)} ms`,
      ]),
    ]),
  );
}

for (const [name, run] of Object.entries(growthOf)) {
  print(`\n${name}\n`);
  print(
    textTable([
      ['pieces', 'sheets', 'time', 'beside a tenth', 'n log n'],
      ...measureGrowth(run, Number(values.rounds)).map(({ pieces, sheets, ms, ratio, expected }) => [
        `${pieces}`,
        `${sheets}`,
        `${ms.toFixed(1)} ms`,
        ratio === undefined ? '' : times(ratio),
        expected === undefined ? '' : times(expected),
      ]),
    ]),
  );
}

if (kits.some(({ sheets, byMaxRects, height, byPotpack }) => sheets > byMaxRects || height > byPotpack)) {
  print('\nworse than another packer\n');
  process.exitCode = 1;
}
