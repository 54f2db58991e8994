import { isObject, type Json, type Spec } from './pointer.ts';

/** What can be said of a design that is kept. */
export const aboutNames = ['title', 'notes', 'credit', 'licence'] as const;
export type About = Readonly<Record<(typeof aboutNames)[number], string>>;

export const emptyAbout: About = { title: '', notes: '', credit: '', licence: '' };

/** What was said of a design that is kept. */
export const aboutOf = (value: Json): About => {
  const held = isObject(value) ? value : {};
  const text = (name: keyof About) => (typeof held[name] === 'string' ? held[name] : '');
  return { title: text('title'), notes: text('notes'), credit: text('credit'), licence: text('licence') };
};

/** A design to keep: only what was filled in. */
export function designOf(spec: Spec, name: string, about: About): Json {
  const said = aboutNames.filter((each) => about[each].trim() !== '');
  return {
    title: name,
    ...Object.fromEntries(said.map((each) => [each, about[each].trim()])),
    spec,
  };
}
