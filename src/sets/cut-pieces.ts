import { setImmediate as nextTurn } from 'node:timers/promises';
import { drawFolder } from '../../shared/drawing/draw-folder.ts';
import { drawPiece } from '../../shared/drawing/draw-piece.ts';
import type { Folded } from '../../shared/folding/proof-of.ts';
import { withoutNotes } from '../../shared/kept/owners-notes.ts';
import { piecesOf } from '../../shared/knockouts/pieces.ts';
import { type CutPiece, cutPieceOf, drawingOfRectangle } from '../../shared/sets/cut-piece.ts';
import { setPath } from '../../shared/sets/set-path.ts';
import { paperOf, type SetPaper, type SetPiece, type SetSpec } from '../../shared/sets/set-spec.ts';
import type { FolderSpec } from '../../shared/spec/folder-spec.ts';
import { cutOrRefuse } from '../folders/cut-or-refuse.ts';
import { foldOrRefuse } from '../folders/fold-or-refuse.ts';
import { fontsFor } from '../folders/fonts-for.ts';
import { CannotBeFolded } from '../problem/cannot-be-folded.ts';
import { isProposal } from '../resources/spell-out.ts';
import { GivenUp } from './given-up.ts';

/** Lets others have a turn, since a piece takes a while; ends where nobody waits for the set any more. */
async function giveTurn(signal: AbortSignal | undefined): Promise<void> {
  await nextTurn();
  if (signal?.aborted) throw new GivenUp();
}

/**
 * Every piece of a set, solved, proved and drawn, in the set's order.
 * @param signal aborted when nobody waits for the answer any more
 * @throws CannotBeFolded which names the place in the set
 * @throws GivenUp when the signal was aborted
 */
export async function cutPieces(set: SetSpec, signal?: AbortSignal): Promise<readonly CutPiece[]> {
  const made = new Map<string, Folded>();
  for (const [index, piece] of set.pieces.entries())
    if ('make' in piece) {
      made.set(piece.name, await foldedOf(set, piece, index));
      await giveTurn(signal);
    }
  const cut: CutPiece[] = [];
  for (const [index, piece] of set.pieces.entries()) {
    cut.push(cutOf(set, piece, index, made));
    await giveTurn(signal);
  }
  return cut;
}

function cutOf(set: SetSpec, piece: SetPiece, index: number, made: ReadonlyMap<string, Folded>): CutPiece {
  if ('make' in piece) {
    const folded = foldedNamed(made, piece.name);
    return cutPieceOf(set, piece, folded, drawFolder(folded));
  }
  if ('cut' in piece) {
    const drawing = drawingOfRectangle(piece.name, piece.cut, set.cutter?.kerf ?? 0);
    return cutPieceOf(set, piece, undefined, drawing);
  }
  const folded = foldedNamed(made, piece.inlay.of);
  const drawing = drawPiece(folded, piece.inlay.name);
  if (!drawing) throw noInlay(folded, piece.inlay.of, index);
  return cutPieceOf(set, piece, folded, drawing);
}

function foldedNamed(made: ReadonlyMap<string, Folded>, name: string): Folded {
  const folded = made.get(name);
  if (!folded) throw new Error(`a set passed the schema without its piece ${name}`);
  return folded;
}

async function foldedOf(
  set: SetSpec,
  piece: Extract<SetPiece, { make: unknown }>,
  index: number,
): Promise<Folded> {
  const paper = paperOf(set, piece.paper) ?? 0;
  const spec = specOf(set, piece.make, set.papers[paper]);
  try {
    return cutOrRefuse(foldOrRefuse(spec, await fontsFor(spec)));
  } catch (error) {
    throw error instanceof CannotBeFolded ? inSet(error, index, paper, piece.name) : error;
  }
}

/** A folder's spec with the set's paper, cutter and convention; its outline is always drawn, to be nested. */
function specOf(set: SetSpec, make: FolderSpec, paper: SetPaper | undefined): FolderSpec {
  return {
    ...make,
    prefer: make.prefer ?? 'least-paper',
    ...(paper ? { stock: sheetOf(paper) } : {}),
    ...(set.cutter ? { cutter: set.cutter } : {}),
    convention: { ...set.convention, outline: 'always' },
  } as FolderSpec;
}

/** A paper as a folder's spec holds it, without what only its owner needs to know. */
const sheetOf = ({ packOf: _packOf, ...sheet }: SetPaper) => withoutNotes<unknown>(sheet);

/** The refusal of one folder as a refusal of the set. Remedies that would change what the set shares are left out. */
function inSet({ refusal }: CannotBeFolded, index: number, paper: number, name: string): CannotBeFolded {
  const own = (path: string) => setPath(path, index, paper);
  return new CannotBeFolded({
    ...refusal,
    message: `${name}: ${refusal.message}`,
    errors: refusal.errors.map((error) => ({ ...error, path: own(error.path) })),
    remedies: refusal.remedies.flatMap((remedy) =>
      isProposal(remedy) && remedy.changes.every(({ path }) => own(path).startsWith(`/pieces/${index}/make/`))
        ? [{ ...remedy, changes: remedy.changes.map((change) => ({ ...change, path: own(change.path) })) }]
        : [],
    ),
  });
}

function noInlay(folded: Folded, of: string, index: number): CannotBeFolded {
  const names = piecesOf(folded).map(({ name }) => name);
  const message = `${of} has no such inlay or frame`;
  return new CannotBeFolded({
    message,
    errors: [
      {
        path: `/pieces/${index}/inlay/name`,
        message,
        remedy: names.length === 0 ? 'give one of its knockouts an inlay' : `use ${names.join(' or ')}`,
      },
    ],
    remedies: [],
  });
}
