import type { Folded } from '../folding/proof-of.ts';
import { halfOpenScene } from './half-open-scene.ts';
import { legend } from './legend.ts';
import { moveMarks } from './move-marks.ts';
import { sentence } from './part-names.ts';
import type { Picture, Scene } from './picture.ts';
import { sheetScene } from './sheet-scene.ts';
import { stepScenes } from './step-scenes.ts';

/** Room around a scene, in millimetres, so that lines at its edges are whole. */
const margin = 2;

/** A scene alone, without title and legend, to stand among text. */
export const pictureOfScene = ({ name, heading, description, width, height, marks }: Scene): Picture => ({
  name,
  title: sentence(heading),
  description,
  width: width + 2 * margin,
  height: height + 2 * margin,
  marks: moveMarks(marks, margin, margin),
});

/** Pictures to stand among text, and one legend for all of them. */
export interface TextPictures {
  readonly sheet: Picture;
  readonly steps: readonly { readonly words: string; readonly picture: Picture }[];
  readonly done: Picture;
  readonly legend: Picture;
}

const wide = { width: 170, height: 130 };
const small = { width: 78, height: 64 };
const legendWidth = 170;

/** The open sheet, every step and the finished folder, each as a picture of its own. */
export function textPictures(folded: Folded): TextPictures {
  const steps = stepScenes(folded, small);
  const sheet = sheetScene(folded, wide);
  const done = halfOpenScene(folded, { width: 120, height: 90 });
  const all = [sheet, done, ...steps].flatMap(({ marks }) => marks);
  const explained = legend(all, folded.plan, legendWidth);
  return {
    sheet: pictureOfScene(sheet),
    steps: steps.map((scene) => ({ words: scene.heading, picture: pictureOfScene(scene) })),
    done: pictureOfScene(done),
    legend: {
      name: 'legend',
      title: 'What the pictures show',
      description: 'The kinds of line, paper and arrow in the pictures, each with its name.',
      width: legendWidth + 2 * margin,
      height: explained.height + 2 * margin,
      marks: moveMarks(explained.marks, margin, margin),
    },
  };
}
