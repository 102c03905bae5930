/**
 * Whether two words are likely the same one mistyped: an edit distance (insert, delete, change, swap of
 * neighbours) of 1 from five letters on, of 2 from nine letters on.
 */
export function isNearSpelling(a: string, b: string): boolean {
  const length = Math.min(a.length, b.length);
  const allowed = length >= 9 ? 2 : length >= 5 ? 1 : 0;
  if (allowed === 0 || Math.abs(a.length - b.length) > allowed) return a === b;
  return editDistance(a, b) <= allowed;
}

/** Damerau–Levenshtein distance (adjacent swaps count once). */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(previous[j]! + 1, row[j - 1]! + 1, previous[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length]!;
}
