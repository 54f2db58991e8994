import fc from 'fast-check';
import { type Expectation, type Kind, kinds, type Store } from '../../../src/store/store.ts';

/** One change by a user. */
export type Step =
  | {
      readonly does: 'put';
      readonly owner: string;
      readonly kind: Kind;
      readonly name: string;
      readonly body: unknown;
      readonly expected: Expectation;
    }
  | {
      readonly does: 'remove';
      readonly owner: string;
      readonly kind: Kind;
      readonly name: string;
      readonly expected: Expectation;
    };

/** Steps that often meet: few owners, names, bodies and versions. */
export const steps = (owners: readonly string[]): fc.Arbitrary<Step> => {
  const key = {
    owner: fc.constantFrom(...owners),
    kind: fc.constantFrom<Kind>(...kinds),
    name: fc.constantFrom('lamp', 'Lamp', 'keeper’s log', '灯台', '😀'),
  };
  const expected: fc.Arbitrary<Expectation> = fc.oneof(
    { weight: 4, arbitrary: fc.constant<Expectation>('any') },
    { weight: 1, arbitrary: fc.constantFrom<Expectation>('absent', 'present') },
    { weight: 1, arbitrary: fc.record({ version: fc.integer({ min: 1, max: 4 }) }) },
  );
  return fc.oneof(
    {
      weight: 3,
      arbitrary: fc.record({
        ...key,
        does: fc.constant<'put'>('put'),
        body: fc.oneof(
          fc.constantFrom<unknown>(1, 2, { set: 'cards' }),
          // JSON text has no way to tell -0 from 0 once a program has written it
          fc.jsonValue().map((value): unknown => JSON.parse(JSON.stringify(value))),
        ),
        expected,
      }),
    },
    { weight: 1, arbitrary: fc.record({ ...key, does: fc.constant<'remove'>('remove'), expected }) },
  );
};

/** A thing in the model: its bodies by version. */
interface Kept {
  readonly key: string;
  readonly bodies: ReadonlyMap<number, unknown>;
  readonly version: number;
}

export type Model = ReadonlyMap<string, Kept>;

const sameText = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

const keyOf = ({ owner, kind, name }: Step) => JSON.stringify([owner, kind, name]);

const meets = (expected: Expectation, version: number | undefined) =>
  expected === 'any' ||
  (expected === 'absent' && version === undefined) ||
  (expected === 'present' && version !== undefined) ||
  (typeof expected === 'object' && expected.version === version);

/**
 * What a step does to a plain map, in words of the interface alone.
 * @param version that the store gave, since the model does not say how high a new version is
 */
export function stepModel(
  model: Model,
  step: Step,
  version: number | undefined,
): { readonly model: Model; readonly outcome: string } {
  const key = keyOf(step);
  const kept = model.get(key);
  if (!meets(step.expected, kept?.version)) return { model, outcome: 'stale' };
  if (step.does === 'remove') {
    if (!kept) return { model, outcome: 'absent' };
    return { model: new Map([...model].filter(([each]) => each !== key)), outcome: 'removed' };
  }
  if (kept && sameText(kept.bodies.get(kept.version), step.body)) return { model, outcome: 'same' };
  const now = version ?? Number.NaN;
  const older = step.kind === 'designs' ? [...(kept?.bodies ?? [])] : [];
  const next = { key, version: now, bodies: new Map([...older, [now, step.body] as const]) };
  return { model: new Map([...model, [key, next]]), outcome: kept ? 'replaced' : 'created' };
}

/** Takes a step on a store. */
export async function takeStep(
  store: Store,
  step: Step,
): Promise<{ readonly outcome: string; readonly version: number | undefined }> {
  if (step.does === 'remove')
    return {
      outcome: await store.remove(step.owner, step.kind, step.name, step.expected),
      version: undefined,
    };
  const { outcome, stored } = await store.put(step.owner, step.kind, step.name, step.body, step.expected);
  return { outcome, version: stored?.version };
}

/** All that a store holds of some owners, in the words of the model. */
export async function modelOf(store: Store, owners: readonly string[]): Promise<Model> {
  const found: Kept[] = [];
  for (const owner of owners)
    for (const kind of kinds)
      for (const item of (await store.list(owner, kind, { limit: 100 })).items) {
        const versions =
          kind === 'designs'
            ? (await store.versions(owner, item.name, { limit: 100 })).items.map(({ version }) => version)
            : [item.version];
        const bodies = new Map<number, unknown>();
        for (const version of versions.toReversed())
          bodies.set(version, (await store.read(owner, kind, item.name, version))?.body);
        found.push({ key: JSON.stringify([owner, kind, item.name]), version: item.version, bodies });
      }
  return new Map(found.map((kept) => [kept.key, kept]));
}
