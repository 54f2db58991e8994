export const projectFolder: string;
export const builtFolder: string;
export const fingerprintFile: string;
export function fingerprint(): string;
export function builtFrom(folder?: string): string | undefined;
