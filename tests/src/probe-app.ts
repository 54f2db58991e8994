import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { AppOptions } from '../../src/app.ts';
import { CannotBeFolded } from '../../src/problem/cannot-be-folded.ts';
import { bodyErrorReplies } from '../../src/problem/error-replies.ts';
import { HttpProblem } from '../../src/problem/http-problem.ts';
import { build } from './build.ts';

/** A body with one of each kind of member that the folder spec is made of. */
export const probeSpec = z
  .strictObject({
    style: z.enum(['flat', 'tall']),
    item: z.union([
      z.strictObject({ size: z.enum(['small', 'large']) }),
      z.strictObject({ width: z.number().positive(), height: z.number().positive() }),
    ]),
    count: z.int().min(1).max(9).default(1),
    grid: z.union([z.literal('none'), z.number()]).optional(),
    notes: z.array(z.strictObject({ text: z.string() })).optional(),
  })
  .meta({ id: 'Probe' });

export const goodProbe = { style: 'flat', item: { size: 'small' } } as const;

/** Routes that fail in every way that a route can. */
function addProbes(app: FastifyInstance): void {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/probe',
    {
      schema: {
        tags: ['service'],
        body: probeSpec,
        response: { 200: z.strictObject({ count: z.int() }), ...bodyErrorReplies(422) },
      },
    },
    async ({ body }) => ({ count: body.count }),
  );
  app
    .withTypeProvider<ZodTypeProvider>()
    .get(
      '/probe/query',
      { schema: { querystring: z.strictObject({ width: z.string() }) } },
      async () => 'fine',
    );
  app.withTypeProvider<ZodTypeProvider>().get(
    '/probe/reply',
    { schema: { response: { 200: z.strictObject({ width: z.number() }) } } },
    // a reply that breaks its own schema
    async () => ({ width: 'wide' }) as unknown as { width: number },
  );
  app.post('/probe/refused', async () => {
    throw new CannotBeFolded({
      message: 'The sheet is 12 mm too narrow.',
      errors: [{ path: '/stock/width', message: 'too narrow', remedy: 'use a wider sheet' }],
      bound: 'sheet width',
      shortfall: { mm: 12 },
      remedies: [{ message: 'use the next larger sheet' }],
    });
  });
  app.get('/probe/fault', async () => {
    throw new Error('the password is swordfish');
  });
  app.get('/probe/clash', async () => {
    throw new HttpProblem(409, 'That name is taken.');
  });
}

export const buildProbed = (settings: Readonly<Record<string, string>> = {}, options: AppOptions = {}) =>
  build(settings, { extend: addProbes, ...options });
