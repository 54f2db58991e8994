import type { z } from 'zod';
import { quote } from './name-list.ts';
import { shown } from './value-words.ts';

type BadFormat = z.core.$ZodRawIssue<z.core.$ZodIssueInvalidStringFormat>;

/** What a text should have been, by zod's name of its format. */
const formatNames: Readonly<Record<string, string>> = {
  base64: 'text in base64',
  base64url: 'text in base64url',
  cidrv4: 'a range of IPv4 addresses',
  cidrv6: 'a range of IPv6 addresses',
  date: 'a date such as 2026-05-31',
  datetime: 'a date and time such as 2026-05-31T12:00:00Z',
  duration: 'a duration such as PT15M',
  e164: 'a telephone number such as +15550100',
  email: 'an email address',
  emoji: 'an emoji',
  guid: 'an id in 32 hexadecimal digits',
  hostname: 'a host name',
  ipv4: 'an IPv4 address',
  ipv6: 'an IPv6 address',
  json_string: 'text that holds JSON',
  jwt: 'a signed token',
  mac: 'a hardware address',
  time: 'a time such as 12:00:00',
  url: 'a web address',
  uuid: 'an id in 32 hexadecimal digits',
  uuidv4: 'an id in 32 hexadecimal digits',
  uuidv6: 'an id in 32 hexadecimal digits',
};

/** What such a format asks of the text, where that can be said from the issue. */
function demandOf({ format, prefix, suffix, includes }: BadFormat): string | undefined {
  if (format === 'starts_with') return `must begin with ${quote(String(prefix))}`;
  if (format === 'ends_with') return `must end with ${quote(String(suffix))}`;
  if (format === 'includes') return `must have ${quote(String(includes))} in it`;
  if (format === 'lowercase') return 'must be in small letters';
  if (format === 'uppercase') return 'must be in capital letters';
  const name = formatNames[format];
  return name === undefined ? undefined : `is not ${name}`;
}

/** A text in another form than its schema asks for; a pattern itself helps no reader, so it is not shown. */
export const formatWords = (issue: BadFormat): string =>
  `${shown(issue.input)} ${demandOf(issue) ?? 'is not written as it must be here'}`;
