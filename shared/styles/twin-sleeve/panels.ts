import type { Panel } from '../../creases/fold-program.ts';
import type { Nm } from '../../lengths/nanometres.ts';

/** Columns of a twin sleeve, from left to right. */
export const sleeveColumns = ['left hem', 'front', 'spine', 'back', 'right hem'] as const;
export type SleeveColumn = (typeof sleeveColumns)[number];

/** Its rows, from the top down; the middle one has no name of its own. */
export const sleeveRows = ['top flap', '', 'bottom flap'] as const;
export type SleeveRow = (typeof sleeveRows)[number];

/** The name of the panel where a row and a column cross. */
export const panelName = (row: SleeveRow, column: SleeveColumn): string =>
  row === '' ? column : `${row}, ${column}`;

/** Panels whose edges lie over each other where the flaps meet. */
export const sleeveSeams: readonly (readonly [string, string])[] = (['front', 'spine', 'back'] as const).map(
  (column) => [panelName('top flap', column), panelName('bottom flap', column)],
);

/** Every panel of a twin sleeve, row by row. @param widths of the columns @param heights of the rows */
export function sleevePanels(
  widths: Readonly<Record<SleeveColumn, Nm>>,
  heights: Readonly<Record<SleeveRow, Nm>>,
): Panel[] {
  let top = 0;
  return sleeveRows.flatMap((row) => {
    const bottom = top + heights[row];
    let left = 0;
    const line = sleeveColumns.map((column) => {
      const right = left + widths[column];
      const panel = { name: panelName(row, column), ...namesOf(row, column), left, top, right, bottom };
      left = right;
      return panel;
    });
    top = bottom;
    return line;
  });
}

function namesOf(row: SleeveRow, column: SleeveColumn): Pick<Panel, 'title' | 'label' | 'labels'> {
  const isHem = column === 'left hem' || column === 'right hem';
  const isCover = row === '' && (column === 'front' || column === 'back');
  return {
    ...(row === '' ? {} : { title: isHem ? `${column} of the ${row}` : `${row} at the ${column}` }),
    ...(isHem
      ? { label: 'hem', labels: 'hems' }
      : { label: isCover ? `${column} cover` : row === '' ? column : row }),
  };
}
