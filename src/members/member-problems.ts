import type { FastifyRequest } from 'fastify';
import { HttpProblem } from '../problem/http-problem.ts';
import type { Caller } from './caller.ts';

/** A `preHandler` hook of routes that only a group has. */
export async function requireGroup({ server }: FastifyRequest): Promise<void> {
  if (server.config.group) return;
  throw new HttpProblem(404, 'This service has one user and no members.', [
    {
      path: '',
      message: 'members belong to a group, which signs in; here only this machine is answered',
      remedy: 'add a first member with "hemfold members add", and start the service with GROUP=true',
    },
  ]);
}

/** Answered for a member who is not there, and just so for one whom the caller may not see. */
export const noMember = (name: string) =>
  new HttpProblem(404, `No member called ${JSON.stringify(name)} is known to you.`, [
    {
      path: '/member',
      message: 'nobody whom you may see has this name',
      remedy: 'GET /v1/me tells your own',
    },
  ]);

/** Everybody may see to their own; those who keep the group may see to everybody. @throws {HttpProblem} 404 */
export function requireSelfOrAdmin({ name, scopes }: Caller, member: string): void {
  if (name !== member && !scopes.has('admin')) throw noMember(member);
}

export const noToken = (id: string) =>
  new HttpProblem(404, `The member has no token ${JSON.stringify(id)}.`, [
    { path: '/id', message: 'there is no token with this id', remedy: 'list the member’s tokens' },
  ]);

export const lastAdmin = () =>
  new HttpProblem(409, 'Nothing was changed, since nobody would be left to keep the group.', [
    {
      path: '',
      message: 'no other active member has a token with the scope "admin"',
      remedy: 'give another member such a token first',
    },
  ]);

export const tooMany = (what: string, remedy: string) =>
  new HttpProblem(409, `Nothing was made, since there are as many ${what} as the service allows.`, [
    { path: '', message: `there is no room for more ${what}`, remedy },
  ]);
