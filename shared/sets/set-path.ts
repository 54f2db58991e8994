/**
 * Where in a set a place in the spec of one of its folders is: its paper, cutter and convention are the set's.
 * @param pointer JSON Pointer into the folder's spec
 */
export function setPath(pointer: string, piece: number, paper: number): string {
  const [, member = '', ...rest] = pointer.split('/');
  const tail = rest.map((step) => `/${step}`).join('');
  if (member === 'stock') return `/papers/${paper}${tail}`;
  if (member === 'cutter' || member === 'convention') return pointer;
  return `/pieces/${piece}/make${pointer}`;
}
