import type { Nm } from '../lengths/nanometres.ts';
import type { Range, Wish } from './bounds.ts';

/**
 * The value nearest to a wish that lies in the range and, where the range holds one, on the grid.
 * @param grid step in nanometres; 0 means no grid
 * @returns the value, and whether it is on the grid, or off it because that is what was wished
 */
export function snap(wish: Wish, range: Range, grid: Nm): { readonly value: Nm; readonly onGrid: boolean } {
  const least = Math.ceil(range.least);
  const most = Math.floor(range.most);
  const wanted = Math.min(Math.max(wish.value, least), most);
  if (grid <= 0 || (wish.snap === 'exact' && wanted === wish.value))
    return { value: Math.round(wanted), onGrid: true };
  const below = Math.floor(wanted / grid) * grid;
  const above = Math.ceil(wanted / grid) * grid;
  const nearest = wanted - below <= above - wanted ? [below, above] : [above, below];
  const order = wish.snap === 'up' ? [above, below] : wish.snap === 'down' ? [below, above] : nearest;
  const found = order.find((value) => value >= least && value <= most);
  return found === undefined ? { value: Math.round(wanted), onGrid: false } : { value: found, onGrid: true };
}
