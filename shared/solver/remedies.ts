import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import { describeLength, writeLength } from '../lengths/show-length.ts';
import { applyChanges, type Change, remove, set, setLength } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import { largestThat } from './largest-that.ts';
import type { Plan } from './plan.ts';
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

/** More than anyone folds; stands for a sheet without end. */
const endless: Nm = mm(5000);

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

function freeing(spec: FolderSpec): Idea[] {
  return styleOf(spec).dimensionNames.flatMap(({ name, title }) => {
    const path = `dimensions.${name}`;
    const given = path
      .split('.')
      .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], spec);
    if (given === undefined) return [];
    return [
      { message: `leave the ${title} to the solver`, changes: [remove(`/${path.replaceAll('.', '/')}`)] },
    ];
  });
}

function lessGlue(spec: FolderSpec): Idea[] {
  if ((spec.glue?.width ?? inch(1 / 4)) <= narrowTape) return [];
  const width = describeLength(narrowTape, spec.measure);
  return [{ message: `use tape of ${width}`, changes: [setLength('/glue/width', narrowTape, spec.measure)] }];
}

/** The smallest published sheet that serves, with the paper itself unchanged. */
function listed(spec: FolderSpec): Idea[] {
  if (spec.stock === undefined) return [];
  for (const { size, title } of listedSheets()) {
    const changes = otherSheet(spec, { size }, { size });
    const [works] = tried(spec, { message: `use a sheet of ${title}`, changes });
    if (works) return [works];
  }
  return [];
}

/** The least sheet that would do, measured. */
function larger(spec: FolderSpec): Idea[] {
  if (spec.stock === undefined) return [];
  const sheet = { width: endless, height: endless };
  const [plan] = tried(spec, {
    message: '',
    changes: [...otherSheet(spec, sheet, sheet), set('/prefer', 'least-paper')],
  });
  if (!plan) return [];
  const { width, height } = plan.plan.blank;
  const { measure } = spec;
  const written = { width: writeLength(width, measure), height: writeLength(height, measure) };
  const message = `use a sheet of at least ${describeLength(width, measure)} by ${describeLength(height, measure)}`;
  return [{ message, changes: otherSheet(spec, written, { width, height }) }];
}

type Extent = { readonly size?: unknown; readonly width?: unknown; readonly height?: unknown };

/** Gives the spec's sheet, or the first in its list, another size and leaves the paper as it is. */
function otherSheet(spec: FolderSpec, written: Extent, settled: Extent): Change[] {
  const path = sheetsOf(spec)[0]?.path ?? '/stock';
  return (['size', 'width', 'height'] as const).flatMap((member): Change[] => {
    if (written[member] !== undefined)
      return [{ op: 'add', path: `${path}/${member}`, value: written[member], settled: settled[member] }];
    return memberGiven(spec, path, member) ? [remove(`${path}/${member}`)] : [];
  });
}

const memberGiven = (spec: FolderSpec, path: string, member: string): boolean =>
  [...path.split('/').slice(1), member].reduce<unknown>(
    (value, key) => (value as Record<string, unknown> | undefined)?.[key],
    spec,
  ) !== undefined;

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
