import type { SaxesTagNS } from 'saxes';
import { paintAttributes } from './paint.ts';
import { quoted, Refused } from './refused.ts';

export const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';

const XML = 'http://www.w3.org/XML/1998/namespace';
const XMLNS = 'http://www.w3.org/2000/xmlns/';

/** Attributes that say nothing about what is cut. */
const harmless: readonly string[] = ['id', 'transform', ...paintAttributes];

/** Why some attributes are refused; others only because they are not known. */
const reasons: readonly (readonly [name: RegExp, why: string, remedy: string])[] = [
  [/^on/iu, 'programs are never run', 'remove it'],
  [/^style$/iu, 'styles are not read', 'write its colours as attributes, as in fill="black"'],
  [/^class$/iu, 'style sheets are not read', 'write colours as attributes, as in fill="black"'],
  [/href$/iu, 'links are not followed', 'remove it'],
  [/^xml:base$/iu, 'links are not followed', 'remove it'],
  [
    /^(?:clip-path|mask|filter)$/iu,
    'it hides or changes lines that a blade still follows',
    'change the shape itself',
  ],
  [
    /^(?:display|visibility|opacity|fill-opacity)$/iu,
    'what is hidden or faint would be cut all the same',
    'remove it, or the shape',
  ],
];

/**
 * Refuses an attribute that is not known to be harmless for its element. Throws {@link Refused}.
 * @param own the attributes of this kind of element besides those that all may have
 */
export function checkAttributes(tag: SaxesTagNS, own: readonly string[], where: string): void {
  for (const { name, uri, local } of Object.values(tag.attributes)) {
    if (uri === XMLNS || (uri === XML && (local === 'space' || local === 'lang'))) continue;
    if (uri === '' && (own.includes(name) || harmless.includes(name))) continue;
    const [, why, remedy] = reasons.find(([form]) => form.test(name)) ?? [
      undefined,
      'it is not one that is read',
      'save as plain SVG, or remove it',
    ];
    throw new Refused(`${where} has the attribute ${quoted(name)}: ${why}`, remedy);
  }
}
