import { usualGlueWidth } from '../creases/glue-keep-out.ts';
import { inch, mm, NM_PER_INCH_64TH, type Nm } from '../lengths/nanometres.ts';
import { describeLength, writeLength } from '../lengths/show-length.ts';
import { applyChanges, type Change, remove, set } from '../spec/change.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { lackingIn } from '../spec/lacking.ts';
import { styleOf } from '../styles/registry.ts';
import { pointerTo } from './given.ts';
import { gridOf } from './grid.ts';
import { largestThat } from './largest-that.ts';
import type { Plan } from './plan.ts';
import { type Given, hopelessInAnyRoom, type Shortage, shortagesOf } from './refusal.ts';
import { listedSheets } from './sheets.ts';
import { type Misfit, solveFolder } from './solve-folder.ts';

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

/**
 * The changes that make a refused spec foldable, the least trouble first. Each has been solved.
 * @param misfit the arrangement that comes nearest to folding
 */
export function remediesFor(spec: FolderSpec, misfit: Misfit): readonly Remedy[] {
  const shortages = shortagesOf(misfit, spec.measure);
  const ideas = [
    ...turning(spec),
    ...fewer(spec),
    ...adjusting(spec, shortages),
    ...freeing(spec),
    ...glueInstead(spec),
    ...lessGlue(spec),
    ...bare(spec),
    // paper and machine only matter to a folder that could be folded from some sheet
    ...(hopelessInAnyRoom(misfit)
      ? []
      : [...listed(spec, misfit), ...larger(spec, misfit, shortages), ...unbound(spec, misfit)]),
  ];
  const remedies = ideas.flatMap((idea) => tried(spec, idea));
  return remedies.length > 0
    ? remedies
    : together(spec, misfit, shortages).flatMap((idea) => tried(spec, idea));
}

/** Several changes at once, for when none helps alone. */
function together(spec: FolderSpec, misfit: Misfit, shortages: readonly Shortage[]): Idea[] {
  const adjusted = adjusting(spec, shortages);
  const freed = freeing(spec);
  return [
    {
      message: adjusted.map(({ message }) => message).join(', and '),
      changes: adjusted.flatMap((one) => one.changes),
    },
    { message: 'leave every dimension to the solver', changes: freed.flatMap((one) => one.changes) },
    ...(spec.cutter === undefined
      ? []
      : listed(spec, misfit, [remove('/cutter')], ' and a larger machine, or cut by hand')),
  ].filter(({ changes }) => changes.length > 0);
}

/** The idea with its plan, if it works. */
export function tried(spec: FolderSpec, idea: Idea): Remedy[] {
  const changes = [...idea.changes, ...keptMeasure(spec, idea.changes)];
  const changed = applyChanges(spec, changes);
  if (lackingIn(changed)) return [];
  const solution = solveFolder(changed);
  return solution.ok ? [{ ...idea, changes, plan: solution.plan }] : [];
}

/** Where lengths come or go, the spec says its units from then on: else its measure, and so its grid, might change. */
function keptMeasure(spec: FolderSpec, changes: readonly Change[]): Change[] {
  const lengths = /^\/(?:stock|dimensions|cutter|glue|contents\/envelope)/u;
  const said = spec.units !== undefined || changes.some(({ path }) => path === '/units');
  if (said || !changes.some(({ path }) => lengths.test(path))) return [];
  return [set('/units', spec.measure === 'inch' ? 'in' : 'mm')];
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

/** Gives one fixed dimension the nearest value that would do, on the grid. */
function adjusting(spec: FolderSpec, shortages: readonly Shortage[]): Idea[] {
  const grid = gridOf(spec) || (spec.measure === 'inch' ? NM_PER_INCH_64TH : mm(0.01));
  const onGrid = ({ value, instead }: Given): Nm =>
    (instead > value ? Math.ceil(instead / grid) : Math.floor(instead / grid)) * grid;
  const givens = new Map<string, Given>();
  for (const given of shortages.flatMap((shortage) => shortage.givens)) {
    const known = givens.get(given.path);
    const further =
      Math.abs(given.instead - given.value) > Math.abs((known?.instead ?? 0) - (known?.value ?? 0));
    if (!known || further) givens.set(given.path, given);
  }
  return [...givens.values()].flatMap((given) => {
    const settled = onGrid(given);
    if (settled <= 0) return [];
    const value = writeLength(settled, spec.measure);
    const message = `make the ${given.name} ${describeLength(settled, spec.measure)}`;
    return [{ message, changes: [{ op: 'add' as const, path: given.path, value, settled }] }];
  });
}

/** Packs the cards without their envelopes. */
const bare = ({ contents }: FolderSpec): Idea[] =>
  contents?.envelope === undefined
    ? []
    : [{ message: 'leave the envelopes out', changes: [remove('/contents/envelope')] }];

/** Gives up one fixed dimension. */
function freeing(spec: FolderSpec): Idea[] {
  const given = styleOf(spec).dimensionNames.filter(
    ({ name }) => memberAt(spec, pointerTo(name)) !== undefined,
  );
  return given.map(({ name, title }) => ({
    message: `leave the ${title} to the solver`,
    changes: [remove(pointerTo(name))],
  }));
}

/** What a spec has at a JSON Pointer, if anything. */
const memberAt = (spec: FolderSpec, pointer: string): unknown =>
  pointer
    .split('/')
    .slice(1)
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], spec);

/** Tabs that are glued take less paper than tongues. */
const glueInstead = (spec: FolderSpec): Idea[] =>
  memberAt(spec, '/join') === 'slots'
    ? [{ message: 'hold the tabs with tape or glue', changes: [remove('/join')] }]
    : [];

function lessGlue(spec: FolderSpec): Idea[] {
  if ((spec.glue?.width ?? usualGlueWidth) <= narrowTape) return [];
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

/**
 * The smallest published sheet that serves, with the paper itself unchanged.
 * @param besides what else has to change, and how to say so
 */
function listed(spec: FolderSpec, misfit: Misfit, besides: readonly Change[] = [], saying = ''): Idea[] {
  if (misfit.arrangement.sheet.path === undefined) return [];
  for (const { size, title } of listedSheets(spec.measure)) {
    const changes = [...otherSheet(spec, misfit, { size }, { size }), ...besides];
    const [works] = tried(spec, { message: `use a sheet of ${title}${saying}`, changes });
    if (works) return [works];
  }
  return [];
}

/** The nearest arrangement's sheet, grown by what is short, to the next whole millimetre or 1/16 in. */
function larger(spec: FolderSpec, misfit: Misfit, shortages: readonly Shortage[]): Idea[] {
  const { sheet, sheetTurned } = misfit.arrangement;
  if (sheet.path === undefined) return [];
  const { measure } = spec;
  const short = (side: 'width' | 'height') =>
    shortages.find(({ room }) => room?.name === 'sheet' && room.side === side)?.shortfall ?? 0;
  const step = measure === 'inch' ? inch(1 / 16) : mm(1);
  const grown = (side: Nm, by: Nm) => (by === 0 ? side : Math.ceil((side + by) / step) * step);
  const width = grown(sheet.width, short(sheetTurned ? 'height' : 'width'));
  const height = grown(sheet.height, short(sheetTurned ? 'width' : 'height'));
  if (width === sheet.width && height === sheet.height) return [];
  const written = { width: writeLength(width, measure), height: writeLength(height, measure) };
  const message = `use a sheet of ${describeLength(width, measure)} by ${describeLength(height, measure)}`;
  return [{ message, changes: otherSheet(spec, misfit, written, { width, height }) }];
}

type Extent = { readonly size?: unknown; readonly width?: unknown; readonly height?: unknown };

/** Gives the nearest sheet another size and leaves the paper as it is; of a list of sheets only that one stays. */
function otherSheet(spec: FolderSpec, { arrangement }: Misfit, written: Extent, settled: Extent): Change[] {
  const path = arrangement.sheet.path ?? '/stock';
  const sides = (['size', 'width', 'height'] as const).flatMap((member): Change[] => {
    if (written[member] !== undefined)
      return [{ op: 'add', path: `${path}/${member}`, value: written[member], settled: settled[member] }];
    return memberAt(spec, `${path}/${member}`) === undefined ? [] : [remove(`${path}/${member}`)];
  });
  return [...sides, ...keepOnly(spec, path)];
}

/** Takes every sheet but one out of a list of stock; what is left stays a list. */
export function keepOnly(spec: FolderSpec, path: string): Change[] {
  if (!Array.isArray(spec.stock)) return [];
  const index = Number(path.split('/').at(-1));
  return [
    ...Array.from({ length: spec.stock.length - 1 - index }, () => remove(`/stock/${index + 1}`)),
    ...Array.from({ length: index }, () => remove('/stock/0')),
  ];
}

function unbound(spec: FolderSpec, { arrangement }: Misfit): Idea[] {
  const { sheet } = arrangement;
  const turned = sheet.path === undefined ? undefined : memberAt(spec, `${sheet.path}/turned`);
  return [
    ...(turned === undefined
      ? []
      : [{ message: 'let the sheet lie the other way', changes: [remove(`${sheet.path}/turned`)] }]),
    ...(sheet.oneWay && sheet.path !== undefined
      ? [{ message: 'use paper whose print may be turned', changes: [set(`${sheet.path}/oneWay`, false)] }]
      : []),
    ...(spec.cutter === undefined
      ? []
      : [{ message: 'use a machine with a larger area, or cut by hand', changes: [remove('/cutter')] }]),
  ];
}
