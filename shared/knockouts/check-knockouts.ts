import type { Folded } from '../folding/proof-of.ts';
import { describeLength } from '../lengths/show-length.ts';
import { cutGlue } from './checks/cut-glue.ts';
import { cutLines } from './checks/cut-lines.ts';
import { cutLocks } from './checks/cut-locks.ts';
import type { Checked, Finding } from './checks/finding.ts';
import { loosePaper } from './checks/loose-paper.ts';
import { narrowOpenings } from './checks/narrow-openings.ts';
import { nearLines } from './checks/near-lines.ts';
import { offPlace } from './checks/off-place.ts';
import { overlaps } from './checks/overlaps.ts';
import { sharpCorners } from './checks/sharp-corners.ts';
import { thinWebs } from './checks/thin-webs.ts';
import { layersOf } from './layers.ts';
import { limitsOf } from './limits.ts';
import type { PlacedKnockouts } from './placed.ts';

/** Everything that is to be said of knockouts: what must not be cut first, then in the order of the spec's list. */
export function checkKnockouts(folded: Folded, placed: PlacedKnockouts): readonly Finding[] {
  const { spec } = folded.plan;
  const checked: Checked = {
    ...placed,
    folded,
    layers: layersOf(folded),
    limits: limitsOf(spec.knockoutLimits),
    say: (length) => describeLength(length, spec.measure),
  };
  const radius = spec.cutter?.leastCornerRadius ?? 0;
  const findings = [
    ...offPlace(checked),
    ...loosePaper(checked),
    ...thinWebs(checked),
    ...narrowOpenings(checked),
    ...cutLines(checked),
    ...nearLines(checked),
    ...cutGlue(checked),
    ...cutLocks(checked),
    ...overlaps(checked),
    ...(radius > 0 && !spec.cutter?.roundCorners ? sharpCorners(checked, radius) : []),
  ];
  return findings.toSorted((one, other) => rank(one) - rank(other));
}

const rank = ({ does, knockouts }: Finding): number =>
  (does === 'refuse' ? 0 : 1000) + Math.min(...knockouts, 999);
