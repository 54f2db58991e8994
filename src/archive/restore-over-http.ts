import { z } from 'zod';
import { HttpProblem } from '../problem/http-problem.ts';
import { archiveMediaType } from './archive.ts';
import { BadArchive } from './bad-archive.ts';

export const restoreQuery = z.strictObject({
  replace: z
    .enum(['true', 'false'])
    .default('false')
    .meta({ description: '`true` allows that something was there, which is then gone.' }),
});

const count = z.int().min(0);

export const restoredReply = z
  .strictObject({ members: count, things: count, versions: count })
  .meta({ id: 'Restored', description: 'How much the file brought.' });

const notEmpty = () =>
  new HttpProblem(409, 'Nothing was restored, since something is kept already or somebody is a member.', [
    {
      path: '/replace',
      message: 'a file is restored into an empty store, or in the place of everything',
      remedy: 'export what is there, then send ?replace=true',
    },
  ]);

const noAdmin = () =>
  new HttpProblem(409, 'Nothing was restored, since nobody in the file could keep the group.', [
    {
      path: '',
      message: 'no active member in the file has a token with the scope "admin" that is taken now',
      remedy: 'restore it on the command line, then add such a member with "hemfold members add"',
    },
  ]);

/** What to answer for an outcome or an error of a restore. */
export function restoreProblem(trouble: unknown, mostBytes: number): unknown {
  if (trouble === 'not-empty') return notEmpty();
  if (trouble === 'no-admin') return noAdmin();
  if (trouble instanceof BadArchive)
    return new HttpProblem(400, `Nothing was restored. ${trouble.message}`, [
      {
        path: '',
        message: `line ${trouble.line} of the file is at fault`,
        remedy: 'send the file just as it was exported, to the same or a later version',
      },
    ]);
  const { code } = (trouble ?? {}) as { readonly code?: unknown };
  if (code === 'FST_ERR_CTP_BODY_TOO_LARGE')
    return new HttpProblem(413, `The file is larger than ${mostBytes / 1024 / 1024} MiB.`, [
      {
        path: '',
        message: 'RESTORE_LIMIT bounds what is taken over HTTP',
        remedy: 'restore it on the command line, or raise RESTORE_LIMIT',
      },
    ]);
  if (code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE')
    return new HttpProblem(415, `Send the file as "content-type: ${archiveMediaType}".`);
  return trouble;
}
