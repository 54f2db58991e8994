import { editDistance } from '../sizes/edit-distance.ts';

/** A name longer than this is no slip of one that we know, and comparing it would only cost time. */
const longestCompared = 64;

/** The known names from the nearest to the farthest; capitals and dashes do not count. */
export function byNearness(name: string, known: readonly string[]): readonly { name: string; far: number }[] {
  const plain = (text: string) => text.toLowerCase().replaceAll(/[-_\s]/g, '');
  if (name.length > longestCompared) return known.map((each) => ({ name: each, far: name.length }));
  return known
    .map((each) => ({ name: each, far: editDistance(plain(name), plain(each)) }))
    .toSorted((a, b) => a.far - b.far);
}

/** The known name that was most likely meant: at most a third of the letters differ. */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const [nearest] = byNearness(name, known);
  return nearest && nearest.far <= Math.max(1, Math.floor(name.length / 3)) ? nearest.name : undefined;
}
