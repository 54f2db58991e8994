import { type Appearance, appearancesOf } from '../folding/appearance.ts';
import { directionShown } from '../folding/print-shown.ts';
import type { Folded } from '../folding/proof-of.ts';
import type { Direction, Region } from '../folding/regions.ts';
import { labelOf, listed, type Noun, namesIn, sentence } from './part-names.ts';

const directions: Readonly<Record<Direction, string>> = {
  upright: 'upright',
  inverted: 'upside down',
  'turned left': 'on its left side',
  'turned right': 'on its right side',
};

/** Says which part shows which face of the paper, and which way the print points there; largest parts first. */
export function whatIsSeen(folded: Folded, view: Appearance['view']): string {
  const regions = appearancesOf(folded).find((appearance) => appearance.view === view)?.regions ?? [];
  const { sheet, sheetTurned } = folded.plan.arrangement;
  const names = namesIn(folded);
  const read = regions.map((region): Read => {
    const points = directionShown(sheet, region);
    return {
      noun: labelOf(names, region.part, isAskew(region.direction.sameWay) !== sheetTurned),
      face: region.face,
      direction: points && directions[points],
    };
  });
  const groups = new Map<string, Read[]>();
  for (const one of read) {
    const key = nounGroup(one);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map(saidOf).join(' ');
}

/** A print lies askew on a turned sheet, and on a corner of one that is not turned. */
const isAskew = (direction: Direction): boolean => direction.startsWith('turned');

interface Read {
  readonly noun: Noun;
  readonly face: Region['face'];
  /** In words; undefined where it is not known. */
  readonly direction: string | undefined;
}

/** Corners are turned to both sides, and one sentence says so. */
const nounGroup = ({ noun, face, direction }: Read): string =>
  noun.one === 'corner' ? `${noun.one} ${face}` : `${face} ${direction}`;

function saidOf(group: readonly Read[]): string {
  const counts = new Map<string, { noun: Noun; count: number }>();
  for (const { noun } of group) counts.set(noun.one, { noun, count: (counts.get(noun.one)?.count ?? 0) + 1 });
  const nouns = [...counts.values()].map(
    ({ noun: { one, several = one }, count }) => `the ${count > 1 ? several : one}`,
  );
  const verb = nouns.length > 1 || nouns[0]?.endsWith('s') ? 'show' : 'shows';
  const ways = [...new Set(group.flatMap(({ direction }) => direction ?? []))].join(' or ');
  return `${sentence(listed(nouns))} ${verb} the ${group[0]?.face} face${ways === '' ? '' : `, print ${ways}`}.`;
}
