import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import { describeLength, writeLength } from '../lengths/show-length.ts';
import { applyChanges, type Change, remove, set } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import { largestThat } from './largest-that.ts';
import type { Plan } from './plan.ts';
import { nearest, shortagesOf } from './refusal.ts';
import { listedSheets, sheetsOf } from './sheets.ts';
import { solveFolder } from './solve-folder.ts';

/** A change to the spec that was tried and works, with the plan that it gives. */
export interface Remedy {
  readonly message: string;
  readonly changes: readonly Change[];
  readonly plan: Plan;
}

interface Idea {
  readonly message: string;
  readonly changes: readonly Change[];
}

const narrowTape = inch(1 / 8);

/** The changes that make a refused spec foldable, the least trouble first. Each has been solved. */
export function remediesFor(spec: FolderSpec): readonly Remedy[] {
  const ideas = [
    ...turning(spec),
    ...fewer(spec),
    ...freeing(spec),
    ...lessGlue(spec),
    ...listed(spec),
    ...larger(spec),
    ...unbound(spec),
  ];
  return ideas.flatMap((idea) => tried(spec, idea));
}

/** The idea with its plan, if it works. */
export function tried(spec: FolderSpec, idea: Idea): Remedy[] {
  const solution = solveFolder(applyChanges(spec, idea.changes));
  return solution.ok ? [{ ...idea, plan: solution.plan }] : [];
}

function turning({ contents }: FolderSpec): Idea[] {
  return contents?.turned === undefined
    ? []
    : [{ message: 'let the contents stand the other way', changes: [remove('/contents/turned')] }];
}

function fewer(spec: FolderSpec): Idea[] {
  const count = mostPerPocket(spec, (spec.contents?.perPocket ?? 1) - 1);
  return count < 1
    ? []
    : [{ message: `put ${count} in each pocket`, changes: [set('/contents/perPocket', count)] }];
}

/** The largest number per pocket, up to `most`, for which the spec can be folded; 0 when none can. */
export function mostPerPocket(spec: FolderSpec, most: number): number {
  if (spec.contents === undefined) return 0;
  const worksWith = (count: number) =>
    tried(spec, { message: '', changes: [set('/contents/perPocket', count)] }).length > 0;
  return largestThat(worksWith, most);
}

/** Gives up one fixed dimension; not the only thing that a spec says. */
function freeing(spec: FolderSpec): Idea[] {
  const given = styleOf(spec).dimensionNames.filter(
    ({ name }) => memberAt(spec, pointerTo(name)) !== undefined,
  );
  if (spec.contents === undefined && given.length === 1) return [];
  return given.map(({ name, title }) => ({
    message: `leave the ${title} to the solver`,
    changes: [remove(pointerTo(name))],
  }));
}

const pointerTo = (dimension: string): string => `/dimensions/${dimension.replaceAll('.', '/')}`;

/** What a spec has at a JSON Pointer, if anything. */
const memberAt = (spec: FolderSpec, pointer: string): unknown =>
  pointer
    .split('/')
    .slice(1)
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], spec);

function lessGlue(spec: FolderSpec): Idea[] {
  if ((spec.glue?.width ?? inch(1 / 4)) <= narrowTape) return [];
  const width = describeLength(narrowTape, spec.measure);
  return [
    {
      message: `use tape of ${width}`,
      changes: [
        {
          op: 'add',
          path: '/glue',
          value: { width: writeLength(narrowTape, spec.measure) },
          settled: { width: narrowTape },
        },
      ],
    },
  ];
}

/** The smallest published sheet that serves, with the paper itself unchanged. */
function listed(spec: FolderSpec): Idea[] {
  const path = sheetsOf(spec)[0]?.path;
  if (path === undefined) return [];
  for (const { size, title } of listedSheets()) {
    const changes = otherSheet(spec, path, { size }, { size });
    const [works] = tried(spec, { message: `use a sheet of ${title}`, changes });
    if (works) return [works];
  }
  return [];
}

/** The nearest arrangement's sheet, grown by what is short, to the next whole millimetre or 1/16 in. */
function larger(spec: FolderSpec): Idea[] {
  const solution = solveFolder(spec);
  if (spec.stock === undefined || solution.ok) return [];
  const misfit = nearest(solution.misfits);
  const { sheet, sheetTurned } = misfit.arrangement;
  const { measure } = spec;
  const short = (side: 'width' | 'height') =>
    shortagesOf(misfit, measure)
      .filter(({ bound }) => bound === `sheet ${side}`)
      .reduce((sum, { shortfall }) => sum + shortfall, 0);
  const step = measure === 'inch' ? inch(1 / 16) : mm(1);
  const grown = (side: Nm, by: Nm) => (by === 0 ? side : Math.ceil((side + by) / step) * step);
  const width = grown(sheet.width, short(sheetTurned ? 'height' : 'width'));
  const height = grown(sheet.height, short(sheetTurned ? 'width' : 'height'));
  const written = { width: writeLength(width, measure), height: writeLength(height, measure) };
  const message = `use a sheet of at least ${describeLength(width, measure)} by ${describeLength(height, measure)}`;
  return [{ message, changes: otherSheet(spec, sheet.path ?? '/stock', written, { width, height }) }];
}

type Extent = { readonly size?: unknown; readonly width?: unknown; readonly height?: unknown };

/** Gives one of the spec's sheets another size and leaves the paper as it is. */
function otherSheet(spec: FolderSpec, path: string, written: Extent, settled: Extent): Change[] {
  return (['size', 'width', 'height'] as const).flatMap((member): Change[] => {
    if (written[member] !== undefined)
      return [{ op: 'add', path: `${path}/${member}`, value: written[member], settled: settled[member] }];
    return memberAt(spec, `${path}/${member}`) !== undefined ? [remove(`${path}/${member}`)] : [];
  });
}

function unbound(spec: FolderSpec): Idea[] {
  const stock = Array.isArray(spec.stock)
    ? undefined
    : (spec.stock as { oneWay?: boolean; turned?: boolean } | undefined);
  return [
    ...(stock?.turned === undefined
      ? []
      : [{ message: 'let the sheet lie the other way', changes: [remove('/stock/turned')] }]),
    ...(stock?.oneWay === true
      ? [{ message: 'use paper whose print may be turned', changes: [set('/stock/oneWay', false)] }]
      : []),
    ...(spec.cutter === undefined
      ? []
      : [{ message: 'use a machine with a larger area, or cut by hand', changes: [remove('/cutter')] }]),
  ];
}
