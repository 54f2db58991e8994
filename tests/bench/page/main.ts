import { parseArgs } from 'node:util';
import { addressOf, openContext, openPage, settled } from '../../page/browser.ts';
import { openBrowser, servePage } from '../../page/serve-page.ts';
import { median } from '../median.ts';
import { textTable, times } from '../text-table.ts';
import { noteAnswers, timeChanges } from './in-browser.ts';

/*
 * node tests/bench/page/main.ts [--rounds N]
 * Prints how soon the page shows a changed design, beside a frame of the same browser on the same machine, and how
 * soon it can be used after it was asked for. Needs Chromium. It judges no time.
 */

const { values } = parseArgs({ options: { rounds: { type: 'string', default: '20' } } });
const rounds = Math.max(1, Math.ceil(Number(values.rounds)));

const spec = {
  style: 'twin-sleeve',
  units: 'mm',
  contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' }, perPocket: 2 },
  stock: { size: 'iso-a3', caliper: '0.25 mm' },
};

const [browser, served] = await Promise.all([openBrowser(), servePage()]);
try {
  const context = await openContext(browser);
  await noteAnswers(context);
  const loads: number[] = [];
  for (let load = 0; load < 5; load++) {
    const from = performance.now();
    const { page } = await openPage(context, addressOf(served.url, spec));
    loads.push(performance.now() - from);
    await page.close();
  }
  const { page } = await openPage(context, addressOf(served.url, spec));
  await settled(page);
  const { frame: frames, answered, told, shown } = await timeChanges(page, 'Sets in each pocket', rounds);
  const frame = median(frames);
  const row = (name: string, milliseconds: readonly number[]) => [
    name,
    ...[median(milliseconds), Math.min(...milliseconds)].flatMap((time) => [
      `${time.toFixed(1)} ms`,
      times(time / frame),
    ]),
  ];
  const { stdout } = process;
  stdout.write(`Chromium ${browser.version()}, ${rounds} changes\n\n`);
  stdout.write(
    textTable([
      ['', 'median', 'of a frame', 'best', 'of a frame'],
      row('a frame with nothing to do', frames),
      row('the core asked, until it has solved, proved and painted (aim <= 1 x)', answered),
      row('a change, until the new folder is in the document', told),
      row('a change, until it is on the screen', shown),
      row('the page opened, until it tells of a folder', loads),
    ]),
  );
} finally {
  await browser.close();
  await served.close();
}
