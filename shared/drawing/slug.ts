/** The name of a fold or a step as an id. */
export const slug = (name: string): string => name.replaceAll(' ', '-');
