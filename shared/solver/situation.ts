import { usualGlueWidth } from '../creases/glue-keep-out.ts';
import { allowanceIn } from '../paper/fold-allowance.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import type { Room, Situation } from '../styles/style.ts';
import { demandOf, easeOf, type Load } from './demand.ts';
import { gridOf } from './grid.ts';
import type { Sheet } from './sheets.ts';

/** What a style is told about one arrangement. */
export function situationOf(
  spec: FolderSpec,
  sheet: Sheet,
  rooms: readonly Room[],
  load: Load | undefined,
  itemTurned: boolean,
): Situation {
  const style = styleOf(spec);
  const grid = gridOf(spec);
  return {
    rooms,
    demand: load && demandOf(load, itemTurned, style, spec),
    caliper: sheet.paper.caliper,
    glueWidth: spec.glue?.width ?? usualGlueWidth,
    spineEase: easeOf(style, spec).spine,
    foldLoss: allowanceIn(sheet, grid).entered,
    prefer: spec.prefer ?? 'whole-sheet',
    grid,
    gridGiven: spec.grid !== undefined,
  };
}
