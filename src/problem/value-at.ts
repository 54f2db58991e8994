/** The value at a path, or undefined where there is none. */
export const valueAt = (input: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, key)
        ? (at as Record<PropertyKey, unknown>)[key]
        : undefined,
    input,
  );
