import type { FastifySchemaCompiler } from 'fastify';
import fp from 'fastify-plugin';
import { serializerCompiler } from 'fastify-type-provider-zod';
import type { z } from 'zod';
import { readWith } from '../problem/read-with.ts';

/** Returned rather than thrown: the framework takes a thrown one for a fault of the service. */
const validatorCompiler: FastifySchemaCompiler<z.core.$ZodType> =
  ({ schema }) =>
  (input) => {
    try {
      // the framework gives null for a body that was never sent
      return { value: readWith(schema, input ?? undefined) };
    } catch (error) {
      return { error: error instanceof Error ? error : new Error(String(error)) };
    }
  };

/**
 * Reads and writes by the zod schemas that routes declare.
 * @see https://github.com/turkerdev/fastify-type-provider-zod
 */
export default fp(
  async (app) => {
    app.setValidatorCompiler(validatorCompiler);
    app.setSerializerCompiler(serializerCompiler);
  },
  { name: 'schemas' },
);
