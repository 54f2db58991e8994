/** The spec of the ready-to-paste line and of the first example: note cards for the lighthouse museum's shop. */
export const firstSpec = Object.freeze({
  style: 'twin-sleeve',
  contents: { item: { size: 'iso-a6' }, envelope: { size: 'iso-c6' } },
  stock: { size: 'iso-a3' },
});

/** A line for a terminal that writes the first folder as SVG. */
export const firstCurl = (url: string): string =>
  `curl -sS ${url}/v1/folders/svg -H 'content-type: application/json' -d '${JSON.stringify(firstSpec)}' -o folder.svg`;
