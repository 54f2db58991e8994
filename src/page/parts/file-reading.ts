/** A spec takes no larger file, in bytes: 200 KiB of artwork, 160 KiB of a font. */
export const mostBytes = 200 * 1024;

export const asText = (file: Blob): Promise<string> => file.text();

/** A file as base64 (RFC 4648, section 4). */
export async function asBase64(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}
