import type { Folded } from '../folding/proof-of.ts';
import type { Room } from './fit.ts';
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

/** What to do, and what it looks like. */
export interface StepPicture {
  readonly words: string;
  readonly picture: Picture;
  /** The sheet still lies on the table, its inside up; else the piece stands. */
  readonly lies: boolean;
}

/** Pictures to stand among text, and one legend for all of them. */
export interface TextPictures {
  readonly sheet: Picture;
  readonly steps: readonly StepPicture[];
  readonly done: Picture;
  readonly legend: Picture;
}

/** Text of 3.2 mm, enlarged as often as this, has 16 points. */
export const largePrint = 1.8;

/** Room for a picture in millimetres, before it is enlarged. */
interface Rooms {
  readonly sheet: Room;
  readonly step: Room;
  readonly done: Room;
  readonly legendWidth: number;
  readonly enlarged: number;
}

const standard: Rooms = {
  sheet: { width: 170, height: 130 },
  step: { width: 86, height: 78 },
  done: { width: 120, height: 90 },
  legendWidth: 170,
  enlarged: 1,
};

const large: Rooms = {
  sheet: { width: 96, height: 90 },
  step: { width: 84, height: 58 },
  done: { width: 80, height: 60 },
  legendWidth: 96,
  enlarged: largePrint,
};

/**
 * The open sheet, every step and the finished folder, each as a picture of its own.
 * @param print `large` for pictures whose text has 16 points
 */
export function textPictures(folded: Folded, print: 'standard' | 'large' = 'standard'): TextPictures {
  const rooms = print === 'large' ? large : standard;
  const { legendWidth, enlarged } = rooms;
  const shown = (scene: Scene): Picture => ({ ...pictureOfScene(scene), enlarged });
  const steps = stepScenes(folded, rooms.step);
  const sheet = sheetScene(folded, rooms.sheet);
  const done = halfOpenScene(folded, rooms.done);
  const all = [sheet, done, ...steps].flatMap(({ marks }) => marks);
  const explained = legend(all, folded.plan, legendWidth);
  return {
    sheet: shown(sheet),
    steps: steps.map((scene) => ({
      words: scene.heading,
      picture: shown(scene),
      lies: scene.ratio !== undefined,
    })),
    done: shown(done),
    legend: {
      name: 'legend',
      title: 'What the pictures show',
      description: 'The kinds of line, paper and arrow in the pictures, each with its name.',
      width: legendWidth + 2 * margin,
      height: explained.height + 2 * margin,
      enlarged,
      marks: moveMarks(explained.marks, margin, margin),
    },
  };
}
