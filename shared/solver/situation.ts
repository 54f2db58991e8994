import { usualGlueWidth } from '../creases/glue-keep-out.ts';
import { inch, mm, type Nm } from '../lengths/nanometres.ts';
import { allowanceIn } from '../paper/fold-allowance.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import { styleOf } from '../styles/registry.ts';
import type { Room, Situation } from '../styles/style.ts';
import { demandOf, easeOf, type Load } from './demand.ts';
import type { Sheet } from './sheets.ts';

/** The grid that scores fall on where the spec does not say: 1/16 in or 1 mm; common practice. */
export function gridOf(spec: FolderSpec): Nm {
  if (spec.grid === 'none') return 0;
  return spec.grid ?? (spec.measure === 'inch' ? inch(1 / 16) : mm(1));
}

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
