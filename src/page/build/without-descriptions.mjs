/** Every node of a syntax tree, the outer before the inner. */
function* nodesIn(node) {
  if (typeof node !== 'object' || node === null) return;
  if (typeof node.type === 'string') yield node;
  for (const child of Object.values(node)) {
    if (Array.isArray(child)) for (const each of child) yield* nodesIn(each);
    else yield* nodesIn(child);
  }
}

/** Each `.meta({ … })`, from the dot to the bracket. */
function* metaIn(program) {
  for (const { type, callee, arguments: given, end } of nodesIn(program))
    if (
      type === 'CallExpression' &&
      callee.property?.name === 'meta' &&
      given[0]?.type === 'ObjectExpression'
    )
      yield { start: callee.object.end, end };
}

/** What schemas say of themselves is for the contract, and no reader of the page ever sees it. */
export const withoutDescriptions = (sharedFolder) => ({
  name: 'without-descriptions',
  enforce: 'pre',
  transform(code, id) {
    if (!id.startsWith(sharedFolder) || !code.includes('.meta(')) return null;
    const places = [...metaIn(this.parse(code, { lang: 'ts' }))].sort(
      (one, other) => other.start - one.start,
    );
    if (places.length === 0) return null;
    const short = places.reduce((text, { start, end }) => `${text.slice(0, start)}${text.slice(end)}`, code);
    return { code: short, map: null };
  },
});
