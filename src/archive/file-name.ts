/** The name under which an archive is saved, as in `hemfold-2026-11-25.ndjson`. */
export const archiveFileName = (now: Date): string => `hemfold-${now.toISOString().slice(0, 10)}.ndjson`;
