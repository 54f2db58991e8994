import { readFile } from 'node:fs/promises';

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
  readonly method: 'GET' | 'POST';
  readonly operation: Operation;
}

export const operationsOf = ({ paths }: Document): readonly Place[] =>
  Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => {
      const upper = method.toUpperCase();
      if (upper !== 'GET' && upper !== 'POST') throw new Error(`${method} ${path}: write a case for it`);
      return { path, method: upper, operation } as const;
    }),
  );

export const committedContract = () =>
  readFile(new URL('../../openapi/openapi.json', import.meta.url), 'utf8');
