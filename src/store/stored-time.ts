/** Years of stored times have four digits, so that times sort as they pass. */
export const isStorable = (time: Date): boolean => time.toISOString().length === 24;
