import swagger from '@fastify/swagger';
import swaggerUi from '@fastify/swagger-ui';
import fp from 'fastify-plugin';
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod';
import { describeReplies } from '../contract/describe-replies.ts';
import type { Replies } from '../contract/example.ts';
import exampleReplies from '../contract/example-replies.json' with { type: 'json' };
import { examples } from '../contract/examples.ts';
import { inOrder } from '../contract/in-order.ts';
import type { Contract } from '../contract/json.ts';
import { withKeptReplies } from '../contract/kept-replies.ts';
import { withoutSingleChoices } from '../contract/single-choices.ts';
import { securitySchemes, whoMayCall } from '../contract/who-may-call.ts';
import { withExamples } from '../contract/with-examples.ts';
import { hemfoldVersion } from '../version.ts';

declare module 'fastify' {
  interface FastifyInstance {
    /**
     * The OpenAPI document of every route, in a stable order.
     * @param replies what the app answered to the examples; default what `npm run openapi` kept of its answers
     */
    readonly contract: (replies?: Replies) => Contract;
  }
}

const about = {
  title: 'hemfold',
  version: hemfoldVersion,
  summary: 'Folders for note cards and envelopes, each from one sheet of paper.',
  description: `Send a folder spec; get the solved dimensions, or the blank as layered SVG in real units.
Lengths carry their unit, as in \`"130 mm"\` or \`"5 1/8 in"\`. Errors are RFC 9457 \`application/problem+json\`.`,
  license: { name: 'MIT', identifier: 'MIT' },
};

const tags = [
  { name: 'folders', description: 'One folder: its plan and its drawing.' },
  {
    name: 'sets',
    description: 'Folders with all that goes with them, for a number of people: sheets, shopping, cost.',
  },
  { name: 'calibration', description: 'What a fold takes from a panel: a strip to fold and measure.' },
  { name: 'catalogue', description: 'What can be asked for: published sizes, and the ways of folding.' },
  { name: 'kept', description: 'What you keep by name: conventions, cutters, papers and designs.' },
  { name: 'shared', description: 'A design for whoever has a link to it.' },
  {
    name: 'members',
    description: 'Who belongs to the group, what they show to be known, and all of it as one file.',
  },
  { name: 'service', description: 'The service itself.' },
];

const contractOf = (document: object, replies: Replies): Contract =>
  withExamples(withKeptReplies(describeReplies(withoutSingleChoices(inOrder(document)))), examples, replies);

/**
 * The OpenAPI 3.1 document, from the routes' own schemas, and its pages at /docs. A route without tags stays out.
 * @see https://github.com/fastify/fastify-swagger
 * @see https://github.com/fastify/fastify-swagger-ui
 */
export default fp(
  async (app) => {
    await app.register(swagger, {
      hideUntagged: true,
      openapi: {
        openapi: '3.1.0',
        info: about,
        servers: [{ url: '/' }],
        tags,
        security: [],
        components: { securitySchemes },
      },
      transform: (route) => {
        const { security, replies } = whoMayCall(route.route.config?.needs);
        if (!route.schema) return { schema: route.schema, url: route.url };
        const { schema, url } = jsonSchemaTransform({
          ...route,
          schema: {
            ...route.schema,
            security,
            response: { ...replies, ...(route.schema.response as object) },
          },
        });
        return { schema, url: url.replace(/(?<=.)\/$/, '') };
      },
      transformObject: jsonSchemaTransformObject,
    });
    await app.register(swaggerUi, {
      routePrefix: '/docs',
      theme: { title: 'hemfold: the API' },
      transformSpecification: () => app.contract(),
      uiConfig: { layout: 'BaseLayout', docExpansion: 'list', tryItOutEnabled: true },
    });
    let contract: Contract | undefined;
    app.decorate('contract', (replies?: Replies) => {
      if (replies) return contractOf(app.swagger(), replies);
      contract ??= contractOf(app.swagger(), exampleReplies);
      return contract;
    });
    app.get('/openapi.json', { config: { needs: 'nothing' } }, async (_request, reply) =>
      reply.type('application/json; charset=utf-8').send(app.contract()),
    );
  },
  { name: 'contract', dependencies: ['schemas', 'problems'] },
);
