import { MOST_PER_POCKET } from '../contents/contents-schema.ts';
import { setThickness } from '../contents/stack.ts';
import type { Measure } from '../lengths/length-schema.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';
import { sizeById, sizesOfKind } from '../sizes/catalogue.ts';
import type { Size } from '../sizes/size.ts';
import { styleOf } from '../styles/registry.ts';
import { slackOf } from './bounds.ts';
import { largestThat } from './largest-that.ts';
import type { Plan } from './plan.ts';
import { situationOf } from './situation.ts';

/** A published card with or without its envelope. */
export interface Pair {
  readonly item: Size;
  readonly envelope?: Size;
}

/** Something that a folder of given dimensions holds. */
export interface Fitting extends Pair {
  readonly perPocket: number;
  readonly turned: boolean;
}

const shown = 12;

/** Smaller cards are stamps and labels. */
const leastCard: Nm = mm(70);

/**
 * Every published card with each envelope that it is sold with, then every card on its own; those of one
 * system first, the largest first.
 */
export function pairs(measure: Measure): readonly Pair[] {
  const withEnvelope = sizesOfKind('envelope').flatMap((envelope) =>
    (envelope.takes ?? []).flatMap((id) => {
      const item = sizeById(id);
      return item ? [{ item, envelope }] : [];
    }),
  );
  const alone = sizesOfKind('card').map((item) => ({ item }));
  const rank = ({ item }: Pair) => (item.measure === measure ? 0 : 1);
  return [...withEnvelope, ...alone]
    .filter(({ item }) => item.width >= leastCard)
    .toSorted((one, other) => rank(one) - rank(other) || outerArea(other) - outerArea(one));
}

const outerArea = ({ item, envelope }: Pair): number => (envelope ?? item).width * (envelope ?? item).height;

/** The largest published contents that a plan's pockets take, and how many sets of each. */
export function fittingsOf(plan: Plan): readonly Fitting[] {
  if (styleOf(plan.spec).pockets.length === 0) return [];
  return pairs(plan.spec.measure)
    .flatMap((pair) => fitting(plan, pair) ?? [])
    .slice(0, shown);
}

function fitting(plan: Plan, pair: Pair): Fitting | undefined {
  const ways = [false, true].map((turned) => ({ turned, perPocket: mostOf(pair, turned, plan) }));
  const best = ways.toSorted((one, other) => other.perPocket - one.perPocket)[0];
  return best && best.perPocket >= 1 ? { ...pair, ...best } : undefined;
}

/** How many sets of a pair each pocket takes by every bound of fit, with the plan's own dimensions. */
function mostOf({ item, envelope }: Pair, itemTurned: boolean, plan: Plan): number {
  const { spec, dimensions, arrangement } = plan;
  const { sheet, rooms } = arrangement;
  const style = styleOf(spec);
  const load = {
    itemName: envelope ? ('envelope' as const) : ('card' as const),
    item: envelope ?? item,
    set: setThickness({ item: { size: item.id }, envelope: envelope ? {} : undefined }),
  };
  const fits = (perPocket: number) => {
    const situation = situationOf(spec, sheet, rooms, { ...load, perPocket }, itemTurned);
    const { bounds } = style.model(spec, situation);
    return bounds.every((bound) => bound.kind !== 'fit' || slackOf(bound, dimensions) >= 0);
  };
  return fits(1) ? largestThat(fits, MOST_PER_POCKET) : 0;
}
