import type { FastifyInstance, InjectOptions } from 'fastify';
import type { AppOptions } from '../../src/app.ts';
import { commandLine } from '../../src/members/audit.ts';
import { type Scope, scopes } from '../../src/members/caller.ts';
import type { NewToken } from '../../src/members/members.ts';
import { build } from './build.ts';

type Method = 'GET' | 'HEAD' | 'POST' | 'PUT' | 'DELETE' | 'OPTIONS';
export type Reply = Awaited<ReturnType<FastifyInstance['inject']>> & { readonly headers: Headers };
type Headers = Readonly<Record<string, string | string[] | undefined>>;

/** A member of a group under test, and what shows who it is. */
export interface TestMember {
  readonly name: string;
  readonly token: NewToken;
  /** Asks as this member. */
  ask(method: Method, url: string, body?: object, headers?: Headers): Promise<Reply>;
}

export interface TestGroup {
  readonly app: FastifyInstance;
  /** With every scope. */
  readonly keeper: TestMember;
  /** Asks as nobody. */
  ask(method: Method, url: string, body?: object, headers?: Headers): Promise<Reply>;
  /** Adds a member; with read and write if nothing is said. */
  member(
    name: string,
    wish?: { readonly scopes?: readonly Scope[]; readonly expires?: string },
  ): Promise<TestMember>;
}

export const bearer = (text: string) => ({ authorization: `Bearer ${text}` });

export const asking =
  (app: FastifyInstance, own: Headers = {}) =>
  (method: Method, url: string, body?: object, headers: Headers = {}): Promise<Reply> =>
    app.inject({
      method,
      url,
      headers: { ...own, ...headers } as NonNullable<InjectOptions['headers']>,
      ...(body === undefined ? {} : { payload: body }),
    }) as Promise<Reply>;

/** A service for a group, with a member who keeps it. @param settings environment variables beside GROUP */
export async function buildGroup(
  settings: Readonly<Record<string, string>> = {},
  options: AppOptions = {},
): Promise<TestGroup> {
  const app = await build({ GROUP: 'true', RATE_LIMIT: '0', ...settings }, options);
  const member: TestGroup['member'] = async (name, wish = {}) => {
    const added = await app.members.add(commandLine, name, { scopes: ['read', 'write'], ...wish });
    if (typeof added === 'string') throw new Error(`${name}: ${added}`);
    return { name, token: added.token, ask: asking(app, bearer(added.token.text)) };
  };
  return { app, member, ask: asking(app), keeper: await member('Keeper', { scopes }) };
}
