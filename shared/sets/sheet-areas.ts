import type { Nm } from '../lengths/nanometres.ts';

/** A rectangle of paper, and how much of it the tool reaches. */
export interface SheetArea {
  /** The sheet, cut down first where the machine takes no larger one. */
  readonly width: Nm;
  readonly height: Nm;
  /** Where pieces may lie, from the sheet's top left corner. */
  readonly left: Nm;
  readonly top: Nm;
  readonly reachWidth: Nm;
  readonly reachHeight: Nm;
  /** How far an outline that ends at the sheet's own edge reaches beyond it, with its room for the kerf. */
  readonly beyond: Nm;
  /** It lies a quarter turn clockwise under the tool. */
  readonly turned: boolean;
}

interface Size {
  readonly width: Nm;
  readonly height: Nm;
}

/**
 * How a sheet can lie in a machine: upright or turned, where one is not as good as the other. Without a machine all of it
 * can be used. Along the sheet's own edges nothing is cut, so that half of the kerf may lie beyond them.
 */
export function sheetAreas(
  sheet: Size,
  cutter?: Size & { readonly margin?: Nm | undefined; readonly kerf?: Nm | undefined },
): readonly SheetArea[] {
  if (!cutter) return [within(sheet, sheet, {}, false)];
  const { width, height } = cutter;
  const upright = within(sheet, { width, height }, cutter, false);
  const turned = within(sheet, { width: height, height: width }, cutter, true);
  if (covers(upright, turned)) return [upright];
  return covers(turned, upright) ? [turned] : [upright, turned];
}

function within(
  sheet: Size,
  area: Size,
  { margin = 0, kerf = 0 }: { readonly margin?: Nm | undefined; readonly kerf?: Nm | undefined },
  turned: boolean,
): SheetArea {
  const [width, height] = [Math.min(sheet.width, area.width), Math.min(sheet.height, area.height)];
  const reachWidth = Math.min(width + kerf, margin > 0 ? area.width - 2 * margin : Infinity);
  const reachHeight = Math.min(height + kerf, margin > 0 ? area.height - 2 * margin : Infinity);
  const left = Math.floor((width - reachWidth) / 2);
  const top = Math.floor((height - reachHeight) / 2);
  return { width, height, left, top, reachWidth, reachHeight, beyond: Math.ceil(kerf / 2), turned };
}

const covers = (one: SheetArea, other: SheetArea): boolean =>
  one.reachWidth >= other.reachWidth && one.reachHeight >= other.reachHeight;
