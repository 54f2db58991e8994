import type { GlueStep, GlueStrip } from '../../creases/fold-program.ts';
import { glueKeepOut } from '../../creases/glue-keep-out.ts';
import { mm, type Nm } from '../../lengths/nanometres.ts';
import { panelName, type SleeveRow } from './panels.ts';

/** What decides where a twin sleeve is glued; lengths in nanometres. */
export interface SleeveGlue {
  readonly panelWidth: Nm;
  readonly panelHeight: Nm;
  readonly spine: Nm;
  readonly hem: Nm;
  readonly topFlap: Nm;
  readonly bottomFlap: Nm;
  readonly overlap: Nm;
  readonly hemsOut: boolean;
  readonly tucked: boolean;
  readonly mitred: boolean;
  /** Of the tape or line. */
  readonly glueWidth: Nm;
}

type Box = Pick<GlueStrip, 'left' | 'top' | 'right' | 'bottom'>;
type Row = Pick<Box, 'top' | 'bottom'>;

const { edge, score, mouth } = glueKeepOut;
/** A shorter bit of tape holds nothing; common practice. */
const shortest = mm(5);
/** How far along an axis a strip's corner stays from a score at 45°: 2 mm × √2, rounded up to what a ruler shows. */
const scoreAskew = mm(3);

const spans = (from: Nm, to: Nm): boolean => to - from >= shortest;

/**
 * Corners that are turned out with their hem, one strip each beside the mouth; none where they have no room for
 * it. Corners turned in are held between the hem and its panel.
 */
export function cornerGlue(sleeve: SleeveGlue): readonly GlueStep[] {
  const { hem, glueWidth, hemsOut, mitred } = sleeve;
  const right = hem - scoreAskew - mouth - glueWidth;
  if (!hemsOut || mitred || !spans(mouth, right)) return [];
  const box = { left: mouth, top: mouth, right, bottom: mouth + glueWidth };
  const strips = (['top flap', 'bottom flap'] as const).flatMap((row) =>
    (['left hem', 'right hem'] as const).map((column): GlueStrip => {
      const panel = panelName(row, column);
      const upright = row === 'top flap' ? box : turnedOver(sleeve, box);
      return { panel, face: 'inside', to: panel, ...onSide(sleeve, column, upright) };
    }),
  );
  const name = 'glue at the corners';
  return [{ kind: 'glue', name, holds: 'corners', strips, width: glueWidth, inset: mouth, lines: 1 }];
}

/** Each hem along its free edge, on every panel; open where the other flap is slipped in. */
export function hemGlue(sleeve: SleeveGlue): readonly GlueStep[] {
  const { hem, topFlap, panelHeight, bottomFlap, overlap, hemsOut, tucked } = sleeve;
  const width = Math.min(sleeve.glueWidth, hem - edge - score);
  // beyond the corner, and beyond what is slipped in
  const shut = hem + edge;
  const open = Math.max(shut, overlap + edge);
  const height = topFlap + panelHeight + bottomFlap;
  const below = topFlap + panelHeight;
  const rows: readonly (readonly [SleeveRow, Nm, Nm])[] = [
    ['top flap', tucked && hemsOut ? open : shut, topFlap - score],
    ['', topFlap + score, below - score],
    ['bottom flap', below + score, height - (tucked && !hemsOut ? open : shut)],
  ];
  const strips = rows
    .filter(([, top, bottom]) => spans(top, bottom))
    .flatMap(([row, top, bottom]) =>
      (['left hem', 'right hem'] as const).map(
        (column): GlueStrip => ({
          panel: panelName(row, column),
          face: hemsOut ? 'outside' : 'inside',
          to: panelName(row, column === 'left hem' ? 'front' : 'back'),
          ...onSide(sleeve, column, { left: edge, top, right: edge + width, bottom }),
        }),
      ),
    );
  const [around, within] = hemsOut ? ['top', 'bottom'] : ['bottom', 'top'];
  const keepFree = `Leave the hems of the ${around} flap free where the ${within} flap will be slipped in.`;
  if (strips.length === 0) return [];
  const name = 'glue at the hems';
  return [
    {
      kind: 'glue',
      name,
      holds: 'hems',
      strips,
      width,
      inset: edge,
      lines: 1,
      ...(tucked ? { keepFree } : {}),
    },
  ];
}

/**
 * The seam: on the top flap, under the bottom flap. One line beside the edge of the bottom flap, or of the top flap
 * where only that one has room; where the two overlap far, both, so that nothing slides in between them.
 */
export function seamGlue(sleeve: SleeveGlue): readonly GlueStep[] {
  const { hem, panelWidth, spine, topFlap, overlap, glueWidth } = sleeve;
  // rows count from the top flap's free edge, which is the sheet's; the bottom flap's lies at the overlap's depth
  const bottom = Math.min(overlap - edge, topFlap - score);
  const width = Math.min(glueWidth, bottom - edge);
  const outer = { top: bottom - width, bottom };
  const inner = { top: edge, bottom: edge + width };
  const firstSpine = hem + panelWidth;
  const cover = (row: Row): Box => ({
    left: hem + fromMouth(sleeve, row),
    right: firstSpine - score,
    ...row,
  });
  const roomy = [outer, inner].filter((row) => spans(cover(row).left, cover(row).right));
  const rows = roomy.slice(0, overlap >= 2 * edge + 3 * glueWidth ? 2 : 1);
  const strips = rows.flatMap((row) => {
    const middle = { left: firstSpine + score, right: firstSpine + spine - score, ...row };
    return [
      seamStrip('front', cover(row)),
      seamStrip('back', mirrored(sleeve, cover(row))),
      ...(spans(middle.left, middle.right) ? [seamStrip('spine', middle)] : []),
    ];
  });
  if (strips.length === 0) return [];
  const keepFree = 'Keep it off the panels behind, or the pockets are shut.';
  const name = 'glue at the seam';
  return [{ kind: 'glue', name, holds: 'seam', strips, width, inset: edge, lines: rows.length, keepFree }];
}

const seamStrip = (column: 'front' | 'spine' | 'back', box: Box): GlueStrip => ({
  panel: panelName('top flap', column),
  face: 'outside',
  to: panelName('bottom flap', column),
  ...box,
});

/**
 * How far from the mouth the two flaps lie on each other. Tucked, they do all the way; in a flat seam the hem of
 * one of them lies between, up to its end at 45° or its whole depth.
 */
function fromMouth({ hem, overlap, hemsOut, tucked }: SleeveGlue, row: Row): Nm {
  if (tucked) return mouth;
  const fromItsEnd = hemsOut ? row.bottom : overlap - row.top;
  return Math.max(mouth, Math.min(hem + edge, fromItsEnd + scoreAskew));
}

const mirrored = ({ hem, panelWidth, spine }: SleeveGlue, { left, right, ...rest }: Box): Box => {
  const width = 2 * (hem + panelWidth) + spine;
  return { left: width - right, right: width - left, ...rest };
};

const turnedOver = ({ topFlap, panelHeight, bottomFlap }: SleeveGlue, { top, bottom, ...rest }: Box): Box => {
  const height = topFlap + panelHeight + bottomFlap;
  return { top: height - bottom, bottom: height - top, ...rest };
};

const onSide = (sleeve: SleeveGlue, column: 'left hem' | 'right hem', box: Box): Box =>
  column === 'left hem' ? box : mirrored(sleeve, box);
