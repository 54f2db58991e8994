import type { PlannedSet } from '../../shared/sets/show-set-plan.ts';
import { readWith } from '../problem/read-with.ts';
import { asJson, optionsOf, type SpecCommand } from './spec-command.ts';

async function setIn(spec: unknown) {
  const { setSpec } = await import('../../shared/sets/set-spec.ts');
  return readWith(setSpec, spec);
}

async function plannedSet(spec: unknown): Promise<PlannedSet> {
  const { nestingPool } = await import('../nesting/nesting-pool.ts');
  const { planSet } = await import('../sets/plan-set.ts');
  const pool = nestingPool();
  try {
    return await planSet(await setIn(spec), pool);
  } finally {
    await pool.close();
  }
}

/** Every command that takes a set; each loads what it needs when it runs. */
export const setCommands: readonly SpecCommand[] = [
  {
    name: 'set-plan',
    takes: 'set',
    summary: 'what a set takes: sheets, ribbon, tape, cost, time, as JSON',
    run: async (spec) => {
      const { showSetPlan } = await import('../../shared/sets/show-set-plan.ts');
      return asJson(showSetPlan(await plannedSet(spec)));
    },
  },
  {
    name: 'set-sheets',
    takes: 'set',
    summary: 'every sheet of a set as layered SVG, in one ZIP',
    run: async (spec) => {
      const { sheetsOf } = await import('../sets/sheets-of-set.ts');
      return sheetsOf(await plannedSet(spec));
    },
  },
  {
    name: 'set-labels',
    takes: 'set',
    summary: 'labels for the kits of a class, and cards to make them by, as a PDF',
    options: optionsOf({
      print: ['standard or large', 'standard'],
      paper: ['a4 or letter', 'a4'],
    }),
    run: async (spec, options) => {
      const { labelsQuery } = await import('../../shared/labels/labels-query.ts');
      const { labelsOfSet } = await import('../labels/labels-of-set.ts');
      return labelsOfSet(await setIn(spec), readWith(labelsQuery, options), new Date());
    },
  },
];
