export const ORDINARY: ReadonlySet<string> = new Set([]);
