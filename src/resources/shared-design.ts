import { z } from 'zod';
import { aboutDesign } from '../../shared/kept/kept-design.ts';
import { type FolderSpec, folderSpec } from '../../shared/spec/folder-spec.ts';
import { HttpProblem } from '../problem/http-problem.ts';
import { InvalidInput, readWith } from '../problem/read-with.ts';
import { moment } from '../replies/moment.ts';
import type { Clock, Store, Stored } from '../store/store.ts';
import { findOwn } from './find-kept.ts';
import { replaceNames } from './replace-names.ts';

/** The secret part of a link. */
export const secretParameter = z.strictObject({
  secret: z.string().min(1).max(100).meta({ description: 'The secret of the link.' }),
});

/** A design as whoever has a link to it reads it. */
export const sharedDesignReply = z
  .strictObject({
    ...aboutDesign,
    version: z.int().min(1),
    changed: moment('When this version was kept.'),
    spec: z.unknown().meta({
      description: 'The folder spec, with everything that it names in its place, so that it stands alone.',
    }),
  })
  .meta({ id: 'SharedDesign' });

export type SharedDesign = z.output<typeof sharedDesignReply>;

/** Answered alike for links that never were, were revoked or have expired. */
const noSuchLink = () =>
  new HttpProblem(404, 'This link gives nothing: it is mistyped, or was revoked, or has expired.', [
    { path: '/secret', message: 'no design is behind it', remedy: 'ask whoever sent it for a new one' },
  ]);

/**
 * The design behind a link, with what its spec names of its owner's things put in place.
 * @throws {HttpProblem} 404
 */
export async function sharedDesign(store: Store, clock: Clock, secret: string): Promise<SharedDesign> {
  const stored = await store.shared(secret, clock());
  if (!stored) throw noSuchLink();
  return { ...(await standingAlone(store, stored)), version: stored.version, changed: stored.changed };
}

async function standingAlone(store: Store, { owner, body }: Stored) {
  const design = body as Omit<SharedDesign, 'version' | 'changed'>;
  return { ...design, spec: await replaceNames(design.spec, findOwn(store, owner)) };
}

/**
 * The spec of a shared design, read.
 * @throws {HttpProblem} 409 for a design that names what its owner no longer keeps, or that this version refuses
 */
export function specOfShared({ spec }: SharedDesign): FolderSpec {
  try {
    return readWith(folderSpec, spec);
  } catch (error) {
    if (!(error instanceof InvalidInput)) throw error;
    throw new HttpProblem(409, 'The spec of this design cannot be read any more; its owner must mend it.', [
      {
        path: '/spec',
        message: 'it names something that is no longer kept, or this version refuses it',
        remedy: 'ask its owner to plan it again',
      },
    ]);
  }
}
