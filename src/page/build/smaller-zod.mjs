/** Names that a module exports. */
const exportsOf = (code) => [
  ...[...code.matchAll(/^export (?:async )?(?:function|const|let|class) (\w+)/gmu)].map(([, name]) => name),
  ...[...code.matchAll(/^export \{([^}]*)\}/gmu)].flatMap(([, list]) =>
    list.split(',').map((each) =>
      each
        .trim()
        .split(/\s+as\s+/u)
        .at(-1),
    ),
  ),
];

/** What makes JSON Schema of zod's schemas hangs on each of them; the page only reads with them, and leaves it out. */
const withoutJsonSchema = (code) =>
  [
    "const leftOut = () => () => { throw new Error('the page makes no JSON Schema'); };",
    `export { ${exportsOf(code)
      .map((name) => `leftOut as ${name}`)
      .join(', ')} };`,
  ].join('\n');

/** Every string of zod's can become an address, an identifier or a date; none in a folder's spec does. */
const withoutFormats = (code) =>
  code.replace(/(\$constructor\("ZodString", \(inst, def\) => \{[\s\S]*?\n\}), \{[\s\S]*?\n\}\);/u, '$1);');

const changes = [
  [/zod\/v4\/core\/(?:to-json-schema|json-schema-processors)\.js$/u, withoutJsonSchema],
  [/zod\/v4\/classic\/schemas\.js$/u, withoutFormats],
];

/** Leaves out of the package "zod" what the page never asks of it. */
export const smallerZod = () => ({
  name: 'smaller-zod',
  enforce: 'pre',
  transform(code, id) {
    const [, change] = changes.find(([file]) => file.test(id)) ?? [];
    return change ? { code: change(code), map: null } : null;
  },
});
