import type { FolderSpec } from '../spec/folder-spec.ts';
import type { Room } from '../styles/style.ts';
import type { Arrangement } from './plan.ts';
import type { Sheet } from './sheets.ts';

const either = (choice: boolean | undefined, turning: boolean): readonly boolean[] =>
  choice === undefined ? (turning ? [false, true] : [false]) : [choice];

/** Every way to lay a spec's folder on one sheet, the least turned first. */
export function arrangementsOn(sheet: Sheet, spec: FolderSpec): readonly Arrangement[] {
  const { cutter, contents } = spec;
  return either(sheet.turned, sheet.width !== sheet.height).flatMap((sheetTurned) =>
    either(undefined, cutter !== undefined && cutter.width !== cutter.height).flatMap((across) => {
      const drawingTurned = sheetTurned !== across;
      const rooms = roomsOf(sheet, sheetTurned, spec, drawingTurned);
      return either(contents?.turned, contents !== undefined).map((itemTurned) => ({
        sheet,
        sheetTurned,
        drawingTurned,
        itemTurned,
        rooms,
      }));
    }),
  );
}

function roomsOf(sheet: Sheet, sheetTurned: boolean, spec: FolderSpec, drawingTurned: boolean): Room[] {
  const onSheet = room('sheet', sheet.width, sheet.height, sheetTurned, sheet.path ?? '/stock');
  if (!spec.cutter) return [onSheet];
  const margin = 2 * (spec.cutter.margin ?? 0);
  const { width, height } = spec.cutter;
  return [onSheet, room('cutter', width - margin, height - margin, drawingTurned, '/cutter')];
}

const room = (name: Room['name'], width: number, height: number, turned: boolean, path: string): Room =>
  turned ? { name, width: height, height: width, path } : { name, width, height, path };
