/** The id of the field for a member of the spec. */
export const fieldId = (pointer: string): string => `at${pointer.replaceAll(/[^\w]/gu, '-')}`;
