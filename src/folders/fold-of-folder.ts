import type { FoldDocument } from '../../shared/fold-format/fold-document.ts';
import { toFold } from '../../shared/fold-format/to-fold.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { hemfoldVersion } from '../version.ts';
import { foldOrRefuse } from './fold-or-refuse.ts';

/**
 * The crease pattern and the folded forms for a spec, as FOLD 1.2.
 * @throws CannotBeFolded
 */
export const foldOfFolder = (spec: FolderSpec): FoldDocument =>
  toFold(foldOrRefuse(spec), `hemfold ${hemfoldVersion}`);
