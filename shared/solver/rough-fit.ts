import type { Nm } from '../lengths/nanometres.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import type { Room } from '../styles/style.ts';
import { loadOf } from './demand.ts';
import { eliminate, sharesOf } from './eliminate.ts';
import type { Arrangement } from './plan.ts';
import type { Sheet } from './sheets.ts';
import { situationOf } from './situation.ts';

/** The least width and height that any blank for a spec has, in nanometres; each for itself. */
interface LeastBlank {
  readonly width: Nm;
  readonly height: Nm;
}

/**
 * A quick look at whether an arrangement can have room enough, which spares most sheets of a long list the
 * full solution. What it lets pass may still fail.
 * @returns for an arrangement, by how much its room is too small at least, in nanometres; 0 when it may do
 */
export function roughShortfall(spec: FolderSpec): (arrangement: Arrangement) => Nm {
  const known = new Map<string, LeastBlank>();
  return ({ sheet, itemTurned, rooms }) => {
    const key = [sheet.paper.caliper, sheet.foldFactor, itemTurned].join();
    const least = known.get(key) ?? leastBlank(spec, sheet, itemTurned);
    known.set(key, least);
    return rooms.reduce(
      (worst, { width, height }) => Math.max(worst, least.width - width, least.height - height),
      0,
    );
  };
}

/** Asks for a blank in a room of no size: the contradictions tell how much room is needed. */
function leastBlank(spec: FolderSpec, sheet: Sheet, itemTurned: boolean): LeastBlank {
  const style = styleOf(spec);
  const load = spec.contents && loadOf(spec.contents, style, sheet, spec);
  const [across, down] = (['width', 'height'] as const).map((side): Nm => {
    // a room that is endless the other way, so that each side is judged alone
    const room: Room = { name: 'sheet', width: Infinity, height: Infinity, path: '', [side]: 0 };
    const { unknowns, bounds } = style.model(spec, situationOf(spec, sheet, [room], load, itemTurned));
    const finite = bounds.filter(({ limit }) => Number.isFinite(limit));
    const { contradictions } = eliminate(
      finite,
      unknowns.map(({ name }) => name),
    );
    const needs = contradictions.flatMap((row) => {
      const rooms = [...sharesOf(row)].filter(([{ kind }]) => kind === 'room');
      return rooms.length === 1 && rooms[0] ? [-row.limit / rooms[0][1]] : [];
    });
    return Math.max(0, ...needs);
  });
  return { width: across ?? 0, height: down ?? 0 };
}
