import type { Json } from './json.ts';

/** One request with a name, shown in the contract with the reply that the running app gives to it. */
export interface Example {
  /** Kebab-case, and unique in its operation. */
  readonly name: string;
  readonly summary: string;
  /** Of an operation that reads a body; text where that is no JSON. */
  readonly body?: Json;
  /** Of the body, where it is not `application/json`. */
  readonly mediaType?: string;
  /** Values of the parameters, in the path or in the query. */
  readonly parameters?: Readonly<Record<string, string>>;
  /** Request headers beside the content type. */
  readonly headers?: Readonly<Record<string, string>>;
  /**
   * How much of the reply is shown; default all of it. An excerpt has the first entries of every long list. With
   * `none` the reply is a 200.
   */
  readonly show?: 'excerpt' | 'none';
}

/** What the app answered. */
export interface Reply {
  readonly status: number;
  readonly mediaType: string;
  readonly value: Json;
}

/** By operation id. */
export type Examples = Readonly<Record<string, readonly Example[]>>;

/** By operation id and the example's name. */
export type Replies = Readonly<Record<string, Readonly<Record<string, Reply>>>>;
