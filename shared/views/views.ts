import type { Folded } from '../folding/proof-of.ts';
import { styleOf } from '../styles/registry.ts';
import { closedScene } from './closed-scene.ts';
import { flatScene } from './flat-scene.ts';
import { halfOpenScene } from './half-open-scene.ts';
import { page, type Row } from './page.ts';
import { scaleOf, sizeOf } from './page-notes.ts';
import type { Picture, Scene } from './picture.ts';
import { sheetScene } from './sheet-scene.ts';
import { stepScenes } from './step-scenes.ts';
import type { ViewName, WholeView } from './view-name.ts';

/** Room for scenes: alone on an A4 sheet that lies on its side, two beside each other, and as one of many steps. */
const alone = { width: 260, height: 138 };
const paired = { width: 132, height: 82 };
const asStep = { width: 62, height: 62 };
const stepColumns = 4;
/** Widths inside the margins: of a page with one scene, and of one whose steps' sentences need room. */
const leastWidth = 180;
const leastWidthOfSteps = 256;

const outside = (folded: Folded, room = alone) => flatScene(folded, 'outside', room);
const inside = (folded: Folded, room = alone) => flatScene(folded, 'inside', room);

const wholeViews: Readonly<Record<WholeView, (folded: Folded) => Picture>> = {
  sheet: (folded) => single(folded, sheetScene(folded, alone)),
  outside: (folded) => single(folded, outside(folded)),
  inside: (folded) => single(folded, inside(folded)),
  closed: (folded) => single(folded, closedScene(folded, alone)),
  'half-open': (folded) => single(folded, halfOpenScene(folded, alone)),
  steps: (folded) => {
    const done = { ...halfOpenScene(folded, paired), heading: 'done' };
    return several(folded, 'steps', 'folded step by step', [...stepRows(folded), row(done)]);
  },
  all: (folded) =>
    several(folded, 'all', folded.program.steps.length > 0 ? 'finished, and step by step' : 'finished', [
      row(closedScene(folded, paired), halfOpenScene(folded, paired)),
      row(outside(folded, paired), inside(folded, paired)),
      ...stepRows(folded),
    ]),
};

/** The picture of a view; undefined for a step that the folder does not have. */
export function pictureOf(folded: Folded, view: ViewName): Picture | undefined {
  if (isWhole(view)) return wholeViews[view](folded);
  const scene = stepScenes(folded, alone).find(({ name }) => name === view);
  return scene && single(folded, scene);
}

const isWhole = (view: ViewName): view is WholeView => Object.hasOwn(wholeViews, view);

function single(folded: Folded, scene: Scene): Picture {
  const { name, heading, number, description, ratio } = scene;
  const title = `${titleOf(folded)}${number === undefined ? `: ${heading}` : `, step ${number}`}`;
  const scale = ratio === undefined ? [] : [scaleOf(ratio)];
  const text = { name, title, description, notes: [sizeOf(folded), ...scale] };
  return page([row(scene)], text, folded.plan, leastWidth);
}

function several(folded: Folded, name: string, what: string, rows: readonly Row[]): Picture {
  const description = [
    ...new Set(rows.flatMap(({ scenes }) => scenes.map((scene) => scene.description))),
  ].join(' ');
  const text = { name, title: `${titleOf(folded)}, ${what}`, description, notes: [sizeOf(folded)] };
  return page(rows, text, folded.plan, leastWidthOfSteps);
}

const row = (...scenes: readonly Scene[]): Row => ({ scenes, columns: scenes.length });

function stepRows(folded: Folded): readonly Row[] {
  const scenes = stepScenes(folded, asStep);
  const count = Math.ceil(scenes.length / stepColumns);
  return Array.from({ length: count }, (_, index) => ({
    scenes: scenes.slice(index * stepColumns, (index + 1) * stepColumns),
    columns: stepColumns,
  }));
}

const titleOf = ({ plan }: Folded): string => styleOf(plan.spec).title;
