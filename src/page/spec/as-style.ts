import { isObject, type Json, type Spec, valueAt } from './pointer.ts';

/** Members that every style reads. */
const shared = ['units', 'stock', 'cutter', 'grid', 'prefer', 'convention'] as const;
/** Members of styles that hold something. */
const ofHolders = ['contents', 'glue', 'ease'] as const;

const picked = (value: Spec, names: readonly string[]): Spec =>
  Object.fromEntries(Object.entries(value).filter(([name]) => names.includes(name)));

const sizeMembers = ['size', 'width', 'height'];

/** The card that a spec speaks of, wherever it does. */
function cardIn(spec: Spec): Spec | undefined {
  const card: Json | undefined = spec.card ?? valueAt(spec, '/contents/item');
  return isObject(card) ? picked(card, sizeMembers) : undefined;
}

/** What of a style belongs together, so that none of it is ever missing. */
const begun: Readonly<Record<string, Spec>> = { insert: { tab: { place: 1, of: 3 } } };

interface Style {
  readonly name: string;
  readonly madeFor: 'contents' | 'card' | 'nothing';
}

/** The same wish for another style: what it holds, or the card that it is as large as, stays. */
export function asStyle({ name, madeFor }: Style, spec: Spec): Spec {
  const card = cardIn(spec);
  const own: Spec =
    madeFor === 'contents'
      ? { ...(card ? { contents: { item: card } } : {}), ...picked(spec, ofHolders) }
      : madeFor === 'card' && card
        ? { card }
        : {};
  return { style: name, ...picked(spec, shared), ...own, ...begun[name] };
}
