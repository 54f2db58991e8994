import { readFile } from 'node:fs/promises';
import { methodOf } from '../../src/contract/run-examples.ts';

interface NamedExample {
  readonly summary?: string;
  readonly value: unknown;
}

export interface Content {
  readonly schema: object;
  readonly examples?: Readonly<Record<string, NamedExample>>;
}
type Contents = Readonly<Record<string, Content>>;

export type Parameter = Content & { readonly name: string; readonly in: string };

export interface Operation {
  readonly operationId?: string;
  readonly summary?: string;
  readonly tags?: readonly string[];
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Contents };
  readonly responses: Readonly<Record<string, { readonly description: string; readonly content?: Contents }>>;
}

/** An OpenAPI document, as far as its tests look. */
export interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, object>> };
  readonly tags: readonly { readonly name: string }[];
}

export interface Place {
  readonly path: string;
  readonly method: ReturnType<typeof methodOf>;
  readonly operation: Operation;
}

export const operationsOf = ({ paths }: Document): readonly Place[] =>
  Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: methodOf(method), operation })),
  );

export const committedContract = () =>
  readFile(new URL('../../openapi/openapi.json', import.meta.url), 'utf8');
