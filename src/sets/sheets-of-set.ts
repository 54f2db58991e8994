import { strToU8, type Zippable, zipSync } from 'fflate';
import { cuttingCaution } from '../../shared/drawing/cutting-caution.ts';
import { contactSheet } from '../../shared/sets/contact-sheet.ts';
import { sheetsOfSet } from '../../shared/sets/nested-paper.ts';
import { paperTitle } from '../../shared/sets/paper-title.ts';
import { setCautions } from '../../shared/sets/set-cautions.ts';
import { sheetFigure } from '../../shared/sets/sheet-figure.ts';
import { sheetFile } from '../../shared/sets/sheet-file.ts';
import { type PlannedSet, showSetPlan } from '../../shared/sets/show-set-plan.ts';
import { writePicture } from '../svg/write-picture.ts';
import { writeSvg } from '../svg/write-svg.ts';

export const zipMediaType = 'application/zip';

/** The earliest local time that a ZIP can tell, so that the same set gives the same bytes anywhere and at any time. */
const noTime = new Date(1980, 0, 1);

/** Every different sheet of a planned set as its drawing, with a manifest, a picture of all, and the cautions: one ZIP. */
export function sheetsOf(planned: PlannedSet): Buffer {
  const { set, pieces, papers } = planned;
  const sheets = sheetsOfSet(papers);
  const cautions = setCautions(set, sheets);
  const files: [name: string, content: string][] = [
    ['manifest.json', `${JSON.stringify(showSetPlan(planned), undefined, 2)}\n`],
    ['cautions.txt', `${cautions.join('\n\n')}\n`],
    ['contact-sheet.svg', writePicture(contactSheet(set, pieces, sheets))],
    ...sheets.map((sheet): [string, string] => {
      const { number, paper, times, placed, faceUp } = sheet;
      const words = {
        title: `Sheet ${number}: ${paperTitle(set, paper)}, ${times} ×`,
        description: [
          `${placed.length} ${placed.length === 1 ? 'piece' : 'pieces'}: ${contentsOf(placed.map(({ piece }) => pieces[piece]?.name ?? ''))}.`,
          ...(faceUp === undefined ? [] : [`The paper’s own ${faceUp} lies up.`]),
          'Valley and mountain are named with the inside of the pieces up.',
          cuttingCaution,
        ].join(' '),
      };
      return [
        sheetFile(number),
        writeSvg(sheetFigure(sheet, pieces, words, set.convention, set.cutter?.kerf)),
      ];
    }),
  ];
  const entries: Zippable = Object.fromEntries(files.map(([name, content]) => [name, strToU8(content)]));
  return Buffer.from(zipSync(entries, { level: 6, mtime: noTime }));
}

/** `4 of folder, 2 of mat` */
function contentsOf(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${count} of ${name}`).join(', ');
}
