import { HttpProblem } from '../problem/http-problem.ts';
import type { Kind, Put } from '../store/store.ts';
import { keptKinds } from './kept-kinds.ts';

const quoted = (name: string) => JSON.stringify(name);

/** Answered for what is not there, and just so for what is another's. */
export const notKept = (kind: Kind, name: string) =>
  new HttpProblem(404, `You keep no ${keptKinds[kind].noun} called ${quoted(name)}.`, [
    { path: '/name', message: 'nothing is kept under this name', remedy: `GET /v1/${kind} lists yours` },
  ]);

/** Answered where the thing is not as the caller expects it; nothing was changed. */
export function changedMeanwhile(kind: Kind, name: string, stored: Put['stored']) {
  const { noun } = keptKinds[kind];
  const now = stored
    ? `the ${noun} ${quoted(name)} is now at version ${stored.version}`
    : `no ${noun} is called ${quoted(name)}`;
  return new HttpProblem(412, `Nothing was changed, since ${now}.`, [
    {
      path: '',
      message: 'the precondition of the request does not hold',
      remedy: stored
        ? 'read it again, make your change to what is there, and send its ETag as If-Match'
        : 'leave If-Match out to keep it as a new one',
    },
  ]);
}

/** Answered where the limits of what one caller may keep are reached. */
export const noMoreRoom = (kind: Kind) =>
  new HttpProblem(409, `Nothing was kept, since there is no more room among your ${kind}.`, [
    {
      path: '',
      message: 'as many things, or as many bytes with all their versions, are kept as the service allows',
      remedy: `remove what you no longer need with DELETE /v1/${kind}/{name}`,
    },
  ]);
