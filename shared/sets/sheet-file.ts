/** The name of a sheet's drawing in the archive. */
export const sheetFile = (number: number): string => `sheet-${String(number).padStart(2, '0')}.svg`;
