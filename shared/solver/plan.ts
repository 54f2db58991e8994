import type { Nm } from '../lengths/nanometres.ts';
import type { FolderSpec } from '../spec/folder-spec.ts';
import type { Dimensions, Room } from '../styles/style.ts';
import type { Bound } from './bounds.ts';
import type { Load } from './demand.ts';
import type { Settled } from './settle.ts';
import type { Sheet } from './sheets.ts';

/** One way to lay things out: which sheet, and what is turned by a quarter. */
export interface Arrangement {
  readonly sheet: Sheet;
  /** The blank lies turned on the sheet. */
  readonly sheetTurned: boolean;
  /** The blank lies turned in the drawing. */
  readonly drawingTurned: boolean;
  /** The item stands turned in the pocket. */
  readonly itemTurned: boolean;
  /** The sheet and the machine's area, as the blank sees them. */
  readonly rooms: readonly Room[];
}

/** The solved dimensions with everything that led to them. Lengths in nanometres. */
export interface Plan {
  readonly spec: FolderSpec;
  readonly arrangement: Arrangement;
  readonly load: Load | undefined;
  readonly dimensions: Dimensions;
  readonly settled: readonly Settled[];
  readonly bounds: readonly Bound[];
  readonly grid: Nm;
  readonly blank: { readonly width: Nm; readonly height: Nm };
  readonly closed: { readonly width: Nm; readonly height: Nm; readonly thickness: Nm };
  /** The sheet’s own edges serve as the blank’s: there is nothing worth trimming. */
  readonly wholeSheet: boolean;
  /** What the solver compares arrangements by; less is better. */
  readonly merit: number;
}
