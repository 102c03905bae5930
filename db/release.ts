/** A digest of `core` and `db`, put here by the compiler: two programs that have it alike derive the same books. */
declare const COMPILED_FROM: string | undefined;

/** Which program this is; null where the sources run as they are and may change from one start to the next. */
export const release: string | null = typeof COMPILED_FROM === "undefined" ? null : COMPILED_FROM;
