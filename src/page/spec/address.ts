import { isObject, type Json, type Spec } from './pointer.ts';

/** What the page's address holds: the design, and which print is outside. */
export interface Addressed {
  readonly spec: Spec;
  /** The two prints of the sheet have changed places. */
  readonly swapped: boolean;
}

const prefix = '#d=';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The fragment that holds a design: JSON as base64url (RFC 4648), so that no program on the way changes it. */
export function toFragment({ spec, swapped }: Addressed): string {
  const text = JSON.stringify(swapped ? { spec, swapped } : { spec });
  const binary = Array.from(bytesOf(text), (byte) => String.fromCharCode(byte)).join('');
  const encoded = btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
  return `${prefix}${encoded}`;
}

/** The design in a fragment; undefined where there is none, or one that nobody can read. */
export function fromFragment(fragment: string): Addressed | undefined {
  if (!fragment.startsWith(prefix)) return undefined;
  try {
    const binary = atob(fragment.slice(prefix.length).replaceAll('-', '+').replaceAll('_', '/'));
    const text = new TextDecoder('utf-8', { fatal: true }).decode(
      Uint8Array.from(binary, (letter) => letter.charCodeAt(0)),
    );
    const value = JSON.parse(text) as Json;
    if (!isObject(value) || !isObject(value.spec)) return undefined;
    return { spec: value.spec, swapped: value.swapped === true };
  } catch {
    return undefined;
  }
}

const linkPrefix = '#link=';

/** The fragment that opens a shared design. */
export const linkFragment = (secret: string): string => `${linkPrefix}${encodeURIComponent(secret)}`;

/** The secret of a shared design in a fragment. */
export function secretIn(fragment: string): string | undefined {
  if (!fragment.startsWith(linkPrefix)) return undefined;
  try {
    return decodeURIComponent(fragment.slice(linkPrefix.length));
  } catch {
    return undefined;
  }
}
