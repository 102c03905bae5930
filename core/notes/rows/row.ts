/** A row: the pattern, what it makes of the part in brackets, and the note that shows it. */
export type Row<Effect extends string> = readonly [pattern: string, effect: Effect, note: string];

/** The rows of a table as it is written: what a row makes of its part in brackets and the note that shows it, then the pattern. */
export const rowsOf = <Effect extends string>(
  written: Readonly<Record<`${Effect}: ${string}`, string>>,
): readonly Row<Effect>[] =>
  Object.entries<string>(written).map(([shown, pattern]) => {
    const at = shown.indexOf(": ");
    return [pattern, shown.slice(0, at) as Effect, shown.slice(at + 2)];
  });
