import type { FoldDocument } from '../../shared/fold-format/fold-document.ts';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import type { FontShelf } from '../../shared/lettering/font-choice.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { hemfoldVersion } from '../version.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';
import { noFonts } from './fonts-for.ts';

/**
 * The crease pattern and the folded forms for a spec, as FOLD 1.2.
 * @param fonts from `fontsFor`, where the spec has lettering
 * @throws CannotBeFolded
 */
export const foldOfFolder = (spec: FolderSpec, fonts: FontShelf = noFonts): FoldDocument =>
  toFold(foldOrRefuse(spec, fonts), `hemfold ${hemfoldVersion}`);
