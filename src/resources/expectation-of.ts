import type { FastifyRequest } from 'fastify';
import { HttpProblem } from '../problem/http-problem.ts';
import type { Expectation } from '../store/store.ts';

/** The entity tag of a version; versions of one name never repeat, so it is a strong one. */
export const tagOf = (version: number): string => `"${version}"`;

const strongTag = /^"(\d{1,10})"$/;

const unreadable = (header: string, value: string) =>
  new HttpProblem(400, `${header}: ${JSON.stringify(value.slice(0, 60))} cannot be honoured here.`, [
    {
      path: '',
      message: `${header} is neither * nor one entity tag of this service`,
      remedy: 'send the ETag of the version that you read, with its quotation marks',
    },
  ]);

/**
 * What a change waits for, from `If-Match` and `If-None-Match` (RFC 9110 sections 13.1.1 and 13.1.2). A weak or
 * foreign tag in `If-Match` never matches.
 * @throws {HttpProblem} 400 for headers that say more than one thing
 */
export function expectationOf({ headers }: Pick<FastifyRequest, 'headers'>): Expectation {
  const match = headers['if-match']?.trim();
  const noneMatch = headers['if-none-match']?.trim();
  if (match !== undefined && noneMatch !== undefined)
    throw new HttpProblem(400, 'If-Match and If-None-Match cannot both hold for one change; send one.');
  if (noneMatch !== undefined) {
    if (noneMatch !== '*') throw unreadable('If-None-Match', noneMatch);
    return 'absent';
  }
  if (match === undefined) return 'any';
  if (match === '*') return 'present';
  if (match.includes(',')) throw unreadable('If-Match', match);
  const version = Number(strongTag.exec(match)?.[1] ?? Number.NaN);
  // no version is 0, so nothing matches it
  return { version: Number.isSafeInteger(version) ? version : 0 };
}
