import { contentsDefaults as defaults } from '../contents/defaults.ts';
import { setThickness } from '../contents/stack.ts';
import type { Measure } from '../lengths/length-schema.ts';
import { mm, type Nm } from '../lengths/nanometres.ts';
import { allowanceIn } from '../paper/fold-allowance.ts';
import { sizeById, sizesOfKind } from '../sizes/catalogue.ts';
import type { Size } from '../sizes/size.ts';
import { styleOf } from '../styles/registry.ts';
import { setsPerPocket } from './demand.ts';
import type { Plan } from './plan.ts';

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
  return pairs(plan.spec.measure)
    .flatMap((pair) => fitting(plan, pair) ?? [])
    .slice(0, shown);
}

function fitting(plan: Plan, pair: Pair): Fitting | undefined {
  const { spec, dimensions, arrangement } = plan;
  const style = styleOf(spec);
  const pocket = style.pocket(dimensions);
  const set = setThickness({ item: {}, envelope: pair.envelope ? {} : undefined });
  const lost = 2 * allowanceIn(arrangement.sheet, plan.grid).entered;
  const width = pocket.width - lost - (spec.ease?.across ?? defaults.easeAcross);
  const height = pocket.height - lost - (spec.ease?.along ?? defaults.easeAlong);
  const spine = style.spine(dimensions);
  const bySpine = setsPerPocket(spine, set, style, arrangement.sheet, spec);
  const outer = pair.envelope ?? pair.item;
  const ways = [false, true].map((turned) => {
    const [across, along] = turned ? [outer.height, outer.width] : [outer.width, outer.height];
    const byHeight = Math.floor((height - along) / set);
    return { turned, perPocket: across <= width ? Math.min(bySpine, byHeight) : 0 };
  });
  const best = ways.toSorted((one, other) => other.perPocket - one.perPocket)[0];
  return best && best.perPocket >= 1 ? { ...pair, ...best } : undefined;
}
