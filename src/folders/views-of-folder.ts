import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import type { ViewName } from '../../shared/views/view-name.ts';
import { pictureOf } from '../../shared/views/views.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { writePicture } from '../svg/write-picture.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';
import { noFonts } from './fonts-for.ts';

/**
 * A picture of the folder for a spec, for people, as SVG; knockouts that must not be cut are drawn and marked.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 * @throws HttpProblem with 404 for a step that the folder does not have
 */
export function viewsOfFolder(spec: FolderSpec, view: ViewName, fonts: FontShelf = noFonts): string {
  const folded = foldOrRefuse(spec, fonts);
  const picture = pictureOf(folded, view);
  if (picture) return writePicture(picture);
  const count = folded.program.steps.length;
  const message = `it is made in ${count} steps, so there is no ${view}`;
  throw new HttpProblem(404, message, [{ path: '/view', message, remedy: `use step-1 to step-${count}` }]);
}
