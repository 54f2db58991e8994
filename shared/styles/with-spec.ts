import type { z } from 'zod';
import type { Style } from './style.ts';

/** A style together with the schema of its spec, as the registry lists it. */
export const withSpec = <Schema extends z.ZodType>(
  spec: Schema,
  style: Style<z.output<Schema>>,
): Style<z.output<Schema>> & { readonly spec: Schema } => Object.freeze({ ...style, spec });
