export function buildPage(place?: string): Promise<void>;
