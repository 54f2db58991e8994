import { set } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import type { Plan } from './plan.ts';
import { keepOnly, type Remedy, tried } from './remedies.ts';
import { listedSheets, type Sheet, sheetsOf } from './sheets.ts';

/** Other published sheets that are worth a look. */
const listedSheetsShown = 2;

/** Of the smaller sheets of the other system only the largest have a chance. */
const nearlyAsLarge = 4;

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

/**
 * The spec's own other sheets; for a sheet from the catalogue, a smaller one of the other system and the next
 * ones that would be tried.
 */
function otherSheets({ spec, arrangement }: Plan): Remedy[] {
  if (spec.stock !== undefined) {
    return sheetsOf(spec)
      .filter(({ path }) => path !== arrangement.sheet.path)
      .flatMap(({ title, path }) =>
        tried(spec, { message: `use ${title}`, changes: keepOnly(spec, path ?? '/stock') }),
      );
  }
  const { sheet } = arrangement;
  const sheets = listedSheets(spec.measure);
  const chosen = sheets.findIndex(({ size }) => size === sheet.size);
  const next = sheets.slice(chosen + 1);
  const smaller = next.filter(({ width, height }) => width * height < sheet.width * sheet.height);
  return [
    ...works(spec, smaller.slice(-nearlyAsLarge), 1),
    ...works(
      spec,
      next.filter((other) => !smaller.includes(other)),
      listedSheetsShown,
    ),
  ];
}

/** Up to so many of the published sheets that work. */
function works(spec: FolderSpec, sheets: readonly Sheet[], most: number): Remedy[] {
  const found: Remedy[] = [];
  for (const { size, title } of sheets) {
    if (found.length === most) break;
    found.push(...tried(spec, { message: `use a sheet of ${title}`, changes: [set('/stock', { size })] }));
  }
  return found;
}

function samePlan(one: Plan, other: Plan): boolean {
  return (
    one.arrangement.sheet.title === other.arrangement.sheet.title &&
    one.arrangement.sheet.width === other.arrangement.sheet.width &&
    one.arrangement.sheet.height === other.arrangement.sheet.height &&
    one.arrangement.itemTurned === other.arrangement.itemTurned &&
    one.load?.perPocket === other.load?.perPocket &&
    Object.entries(one.dimensions).every(([name, value]) => other.dimensions[name] === value)
  );
}
