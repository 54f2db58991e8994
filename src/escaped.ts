const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text as it may stand in HTML between tags and in quoted attributes. */
export const escaped = (text: string): string =>
  text.replaceAll(/[&<>"]/gu, (sign) => entities[sign] ?? sign);
