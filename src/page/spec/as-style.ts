import { isObject, type Json, type Spec, valueAt, withValue } from './pointer.ts';

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
  /** What it leaves to its maker: where that stands in a spec, and what can be chosen. */
  readonly choices: readonly { readonly path: string; readonly options: readonly string[] }[];
}

/**
 * The same wish for another style: what it holds, or the card that it is as large as, stays, and whatever was chosen
 * that it leaves open too.
 */
export function asStyle({ name, madeFor, choices }: Style, spec: Spec): Spec {
  const card = cardIn(spec);
  const own: Spec =
    madeFor === 'contents'
      ? { ...(card ? { contents: { item: card } } : {}), ...picked(spec, ofHolders) }
      : madeFor === 'card' && card
        ? { card }
        : {};
  const other: Spec = { style: name, ...picked(spec, shared), ...own, ...begun[name] };
  return choices.reduce((made, { path, options }) => {
    const chosen = valueAt(spec, path);
    return options.some((option) => option === chosen) ? withValue(made, path, chosen) : made;
  }, other);
}
