import type { Measure } from '../lengths/length-schema.ts';
import { describeLength } from '../lengths/show-length.ts';
import { cautions } from '../plan-reply/cautions.ts';
import { extent } from '../solver/sheets.ts';
import { tooLargeBy } from './at-edges.ts';
import type { SetSheet } from './nested-paper.ts';
import { paperTitle } from './paper-title.ts';
import type { SetSpec } from './set-spec.ts';

/** What to mind before the sheets of a set are cut: what these sheets ask for, then the usual cautions. */
export function setCautions(set: SetSpec, sheets: readonly SetSheet[]): readonly string[] {
  return [
    ...cutDown(set, sheets),
    ...tooLarge(set, sheets),
    ...(sheets.some(({ sharedEdges }) => sharedEdges > 0)
      ? [
          'Neighbours share a cut: hold the sheet down well, for a piece that comes loose early may shift under the tool.',
        ]
      : []),
    ...(set.convention?.layers?.cut?.paint === 'fill' && (set.gap ?? 0) === 0
      ? [
          'Filled outlines are drawn whole, so that lines between neighbours are cut twice: a gap avoids that.',
        ]
      : []),
    ...(set.convention?.outline === 'never'
      ? ['The convention leaves outlines out: the pieces are not cut apart.']
      : []),
    ...cautions,
  ];
}

function cutDown(set: SetSpec, sheets: readonly SetSheet[]): readonly string[] {
  const measure: Measure = set.measure;
  return [
    ...new Set(
      sheets.flatMap(({ paper, area }) => {
        const { width, height } = extent(set.papers[paper] ?? {});
        if (area.width === width && area.height === height) return [];
        return [
          `Cut each sheet of ${paperTitle(set, paper)} down to ${describeLength(area.width, measure)} by ${describeLength(area.height, measure)} first, from its top left corner: the machine takes no larger one.`,
        ];
      }),
    ),
  ];
}

function tooLarge(set: SetSpec, sheets: readonly SetSheet[]): readonly string[] {
  const most = new Map<string, number>();
  for (const { placed, area } of sheets)
    for (const each of placed) {
      const name = set.pieces[each.piece]?.name ?? '';
      const excess = tooLargeBy(each, area);
      if (excess > 0) most.set(name, Math.max(excess, most.get(name) ?? 0));
    }
  return [...most].map(
    ([name, excess]) =>
      `${name} reaches from edge to edge of its sheet, with no room for the kerf, and comes out ${describeLength(excess, set.measure)} larger than asked for: trim it by hand, or take a larger sheet.`,
  );
}
