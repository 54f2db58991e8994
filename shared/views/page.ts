import type { Plan } from '../solver/plan.ts';
import { legend } from './legend.ts';
import { moveMarks } from './move-marks.ts';
import { sentence } from './part-names.ts';
import type { Mark, Picture, Scene, TextMark } from './picture.ts';
import { lineHeight, textSize, widthOf, wrap } from './text-block.ts';

const margin = 10;
const columnGap = 8;
const rowGap = 8;
const afterHeading = 3;
/** A step's number stands left of its sentence. */
const numberRoom = 10;

export interface PageText {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  /** Lines under the title. */
  readonly notes: readonly string[];
}

/** Scenes beside each other, in that many columns of one width. */
export interface Row {
  readonly scenes: readonly Scene[];
  readonly columns: number;
}

/**
 * Puts rows of scenes on a page with a title above and a legend below.
 * A page of a single scene has no heading besides its title, unless it is a step.
 * @param least width in millimetres inside the margins
 */
export function page(rows: readonly Row[], text: PageText, plan: Plan, least: number): Picture {
  const inner = Math.max(least, widthOf(text.title, textSize.title, true), ...rows.map(widthOfRow));
  const top = titleBlock(text, inner);
  const headed = rows.flatMap(({ scenes }) => scenes).length > 1;
  const marks: Mark[] = [...moveMarks(top.marks, margin, margin)];
  let y = margin + top.height + rowGap / 2;
  for (const { scenes, columns } of rows) {
    const cell = (inner - columnGap * (columns - 1)) / columns;
    const blocks = scenes.map((scene) => headingOf(scene, cell, headed));
    const tallest = Math.max(...blocks.map(({ height }) => height));
    for (const [index, scene] of scenes.entries()) {
      const x = margin + index * (cell + columnGap);
      marks.push({
        kind: 'group',
        name: scene.name,
        marks: [
          ...moveMarks(blocks[index]?.marks ?? [], x, y),
          ...moveMarks(scene.marks, x + (cell - scene.width) / 2, y + tallest),
        ],
      });
    }
    y += tallest + Math.max(...scenes.map(({ height }) => height)) + rowGap;
  }
  const explained = legend(marks, plan, inner);
  marks.push(...moveMarks(explained.marks, margin, y));
  const { name, title, description } = text;
  return {
    name,
    title,
    description,
    width: inner + 2 * margin,
    height: y + explained.height + margin,
    marks,
  };
}

const widthOfRow = ({ scenes, columns }: Row): number =>
  Math.max(...scenes.map(({ width }) => width)) * columns + columnGap * (columns - 1);

interface Block {
  readonly marks: readonly Mark[];
  readonly height: number;
}

function titleBlock({ title, notes }: PageText, width: number): Block {
  const first = lines(wrap(title, width, textSize.title, true), { x: 0, size: textSize.title, bold: true });
  const rest = lines(
    notes.flatMap((note) => wrap(note, width, textSize.label)),
    { x: 0, size: textSize.label },
  );
  return {
    marks: [...first.marks, ...moveMarks(rest.marks, 0, first.height)],
    height: first.height + rest.height,
  };
}

function headingOf({ heading, number }: Scene, width: number, headed: boolean): Block {
  if (number !== undefined) {
    const size = textSize.step;
    const words = lines(wrap(heading, width - numberRoom, size), { x: numberRoom, size });
    const figure = lines([`${number}`], { x: 0, size: textSize.title, bold: true });
    // the figure is larger, and its middle is to lie beside that of the first line
    const down = (textSize.title - size) / 2;
    return { marks: [...figure.marks, ...moveMarks(words.marks, 0, down)], height: words.height + down };
  }
  if (!headed) return { marks: [], height: 0 };
  const size = textSize.heading;
  const words = wrap(sentence(heading), width, size, true);
  const block = lines(words, { x: width / 2, size, bold: true, anchor: 'middle' });
  return { marks: block.marks, height: block.height + afterHeading };
}

interface Type {
  readonly x: number;
  readonly size: number;
  readonly bold?: boolean;
  readonly anchor?: TextMark['anchor'];
}

const lines = (texts: readonly string[], { x, size, bold = false, anchor = 'start' }: Type): Block => ({
  marks: texts.map((text, index) => ({
    kind: 'text',
    text,
    at: { x, y: size / 2 + index * size * lineHeight },
    size,
    anchor,
    bold,
  })),
  height: texts.length * size * lineHeight,
});
