import { set } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import type { Plan } from './plan.ts';
import { type Remedy, tried } from './remedies.ts';
import { listedSheets, sheetsOf } from './sheets.ts';

/** Other published sheets that are worth a look. */
const listedSheetsShown = 2;

/** Other ways to serve the same wish, each solved, the best first; none repeats the plan itself. */
export function alternativesTo(plan: Plan): readonly Remedy[] {
  const { spec } = plan;
  return [...otherStanding(plan), ...otherCounts(plan), ...otherPreference(spec), ...otherSheets(plan)]
    .filter((other) => !samePlan(other.plan, plan))
    .toSorted((one, other) => one.plan.merit - other.plan.merit);
}

function otherStanding({ spec, arrangement }: Plan): Remedy[] {
  if (spec.contents === undefined) return [];
  return tried(spec, {
    message: arrangement.itemTurned ? 'stand the contents as given' : 'turn the contents by a quarter',
    changes: [set('/contents/turned', !arrangement.itemTurned)],
  });
}

function otherCounts({ spec, load }: Plan): Remedy[] {
  if (load === undefined) return [];
  return [load.perPocket - 1, load.perPocket + 1]
    .filter((count) => count >= 1 && count <= 200)
    .flatMap((count) =>
      tried(spec, { message: `put ${count} in each pocket`, changes: [set('/contents/perPocket', count)] }),
    );
}

function otherPreference(spec: FolderSpec): Remedy[] {
  const least = spec.prefer === 'least-paper';
  return tried(spec, {
    message: least ? 'use the whole sheet' : 'use as little paper as serves',
    changes: [set('/prefer', least ? 'whole-sheet' : 'least-paper')],
  });
}

/** The spec's own other sheets; for a sheet from the catalogue, the next larger ones. */
function otherSheets({ spec, arrangement }: Plan): Remedy[] {
  if (Array.isArray(spec.stock)) {
    return sheetsOf(spec).flatMap((sheet, index) =>
      sheet.path === arrangement.sheet.path
        ? []
        : tried(spec, {
            message: `use ${sheet.title}`,
            changes: [
              { op: 'add', path: '/stock', value: ownStock(spec, index), settled: ownStock(spec, index) },
            ],
          }),
    );
  }
  if (spec.stock !== undefined) return [];
  const larger = listedSheets().filter(({ width, height }) => width * height > area(arrangement.sheet));
  const found: Remedy[] = [];
  for (const { size, title } of larger) {
    found.push(...tried(spec, { message: `use a sheet of ${title}`, changes: [set('/stock', { size })] }));
    if (found.length === listedSheetsShown) break;
  }
  return found;
}

const ownStock = (spec: FolderSpec, index: number): unknown => (spec.stock as readonly unknown[])[index];

const area = ({ width, height }: { width: number; height: number }): number => width * height;

function samePlan(one: Plan, other: Plan): boolean {
  return (
    one.arrangement.sheet.title === other.arrangement.sheet.title &&
    one.arrangement.itemTurned === other.arrangement.itemTurned &&
    one.load?.perPocket === other.load?.perPocket &&
    Object.entries(one.dimensions).every(([name, value]) => other.dimensions[name] === value)
  );
}
