import type { z } from 'zod';

export type Schema = z.core.$ZodType;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** What a schema reads once optional, default, transform and union wrappers are off: one or more plain schemas. */
export function plainSchemas(schema: Schema): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'optional':
    case 'nullable':
    case 'nonoptional':
    case 'default':
    case 'prefault':
    case 'readonly':
    case 'catch':
    case 'success':
      return plainSchemas(def.innerType);
    case 'pipe':
      return plainSchemas((def.in as z.core.$ZodTypes)._zod.def.type === 'transform' ? def.out : def.in);
    case 'lazy':
      return plainSchemas(def.getter());
    case 'union':
      return def.options.flatMap(plainSchemas);
    case 'intersection':
      return [...plainSchemas(def.left), ...plainSchemas(def.right)];
    default:
      return [schema];
  }
}

/** The options of the union behind the wrappers, or none. */
export function unionOptions(schema: Schema): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === 'union') return def.options;
  if ('innerType' in def) return unionOptions(def.innerType);
  if (def.type === 'pipe')
    return unionOptions((def.in as z.core.$ZodTypes)._zod.def.type === 'transform' ? def.out : def.in);
  return def.type === 'lazy' ? unionOptions(def.getter()) : [];
}

/** Of several object schemas, those whose literal members agree with the input; all of them if none does. */
function matching(schemas: readonly Schema[], input: unknown): readonly Schema[] {
  if (!isRecord(input)) return schemas;
  const agrees = (schema: Schema) => {
    const { def } = (schema as z.core.$ZodTypes)._zod;
    if (def.type !== 'object') return false;
    return Object.entries(def.shape).every(([key, member]) => {
      const { values } = member._zod;
      return !values || !Object.hasOwn(input, key) || values.has(input[key] as z.core.util.Primitive);
    });
  };
  const agreeing = schemas.filter(agrees);
  return agreeing.length > 0 ? agreeing : schemas;
}

function step(schema: Schema, key: PropertyKey): readonly Schema[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'object': {
      const member = Object.hasOwn(def.shape, key) ? def.shape[String(key)] : def.catchall;
      return member ? [member] : [];
    }
    case 'array':
      return [def.element];
    case 'tuple': {
      const item = def.items[Number(key)] ?? def.rest;
      return item ? [item] : [];
    }
    case 'record':
      return [def.valueType];
    default:
      return [];
  }
}

/** The schemas that may read the value at a path, wrappers still on. */
export function schemasAt(schema: Schema, input: unknown, path: readonly PropertyKey[]): readonly Schema[] {
  let here: readonly Schema[] = [schema];
  let value = input;
  for (const key of path) {
    here = matching(here.flatMap(plainSchemas), value).flatMap((each) => step(each, key));
    value = isRecord(value) ? value[String(key)] : undefined;
  }
  return here;
}

/** The member names that are known to an object at a path, in the order of the schema. */
export function knownNames(schema: Schema, input: unknown, path: readonly PropertyKey[]): readonly string[] {
  const value = path.reduce<unknown>((at, key) => (isRecord(at) ? at[String(key)] : undefined), input);
  const objects = matching(schemasAt(schema, input, path).flatMap(plainSchemas), value);
  const names = objects.flatMap((each) => {
    const { def } = (each as z.core.$ZodTypes)._zod;
    return def.type === 'object' ? Object.keys(def.shape) : [];
  });
  return [...new Set(names)];
}
