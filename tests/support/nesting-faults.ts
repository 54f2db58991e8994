import type { NestInput } from '../../shared/nesting/nest-spec.ts';
import type { Nesting, Placed } from '../../shared/nesting/nesting.ts';

/*
 * An independent reading of what a nesting promises: nothing is taken from the engine but its types. Pieces are compared
 * pair by pair, in whole nanometres.
 */

const gapBetween = (one: Placed, other: Placed): number =>
  Math.max(
    one.x - (other.x + other.width),
    other.x - (one.x + one.width),
    one.y - (other.y + other.height),
    other.y - (one.y + one.height),
  );

/** Everything that is wrong with a nesting, in words; none when it keeps every promise. */
export function nestingFaults(spec: NestInput, nesting: Nesting): string[] {
  const faults: string[] = [];
  const say = (condition: boolean, text: string) => {
    if (!condition) faults.push(text);
  };
  const placedOf = new Map<number, number>();
  const usedOf = new Map<number, number>();
  const gap = spec.gap ?? 0;
  nesting.layouts.forEach((layout, number) => {
    const sheet = spec.sheets[layout.sheet];
    if (sheet === undefined) return faults.push(`layout ${number}: no such sheet`);
    say(layout.times >= 1, `layout ${number}: used ${layout.times} times`);
    say(layout.placed.length > 0, `layout ${number}: empty`);
    usedOf.set(layout.sheet, (usedOf.get(layout.sheet) ?? 0) + layout.times);
    const margin = sheet.margin ?? 0;
    layout.placed.forEach((placed, index) => {
      const piece = spec.pieces[placed.piece];
      const name = `layout ${number}, place ${index}`;
      if (piece === undefined) return faults.push(`${name}: no such piece`);
      placedOf.set(placed.piece, (placedOf.get(placed.piece) ?? 0) + layout.times);
      const upright = placed.turn % 180 === 0;
      const [width, height] = upright ? [piece.width, piece.height] : [piece.height, piece.width];
      say(placed.width === width && placed.height === height, `${name}: wrong size`);
      const turns = piece.turns ?? 'quarter';
      const allowed = { none: [0], half: [0, 180], quarter: [0, 90, 180, 270] }[turns];
      say(allowed.includes(placed.turn), `${name}: turned by ${placed.turn} but may turn: ${turns}`);
      say(piece.paper === sheet.paper, `${name}: on the wrong paper`);
      say(piece.face === undefined || piece.face === layout.face, `${name}: wrong face up`);
      const inside =
        placed.x >= margin &&
        placed.y >= margin &&
        placed.x + placed.width <= sheet.width - margin &&
        placed.y + placed.height <= sheet.height - margin;
      say(inside, `${name}: outside the margins`);
      say([placed.x, placed.y].every(Number.isInteger), `${name}: not in whole nanometres`);
      return undefined;
    });
    for (let one = 0; one < layout.placed.length; one++)
      for (let other = 0; other < one; other++) {
        const [a, b] = [layout.placed[one] as Placed, layout.placed[other] as Placed];
        const outlines = spec.pieces[a.piece]?.outline ?? spec.pieces[b.piece]?.outline;
        if (outlines === undefined)
          say(gapBetween(a, b) >= gap, `layout ${number}: places ${other} and ${one} too near`);
      }
    return undefined;
  });
  spec.pieces.forEach((piece, number) => {
    const left = nesting.unplaced
      .filter((each) => each.piece === number)
      .reduce((sum, each) => sum + each.count, 0);
    say(
      (placedOf.get(number) ?? 0) + left === piece.count,
      `piece ${number}: ${placedOf.get(number) ?? 0} placed and ${left} left of ${piece.count}`,
    );
  });
  spec.sheets.forEach((sheet, number) => {
    say(
      (usedOf.get(number) ?? 0) <= (sheet.count ?? Number.POSITIVE_INFINITY),
      `sheet ${number}: more used than there are`,
    );
  });
  const sheets = nesting.layouts.reduce((sum, { times }) => sum + times, 0);
  say(nesting.sheets === sheets, `${nesting.sheets} sheets said, ${sheets} used`);
  say(nesting.bound <= nesting.sheets, 'the bound is above the result');
  say(nesting.gap === nesting.sheets - nesting.bound, 'the gap is not the difference');
  say(!nesting.proved || nesting.gap === 0, 'said to be proved, with a gap');
  say(nesting.utilisation >= 0 && nesting.utilisation <= 1 + 1e-9, `utilisation ${nesting.utilisation}`);
  return faults;
}
