/** Long words of the hazards that people often misspell; no other word lies one slip from them. */
const LONG_WORDS: readonly string[] =
  "methylene chloride polyurethane turpentine denatured acetone varnish lacquer linseed particleboard reupholstered reupholstering upholstered upholstering mattress bassinet asbestos rewired rewiring".split(
    " ",
  );
const SHORTEST = Math.min(...LONG_WORDS.map(({ length }) => length)) - 1;

/** Words as hazards are matched: small letters, no apostrophes, hyphens and commas as spaces, usual slips mended. */
export function plainWords(text: string): string {
  const words = text
    .toLowerCase()
    .replace(/['’`]/g, "")
    .replace(/[^\p{L}\p{N}.#$]+/gu, " ")
    .trim()
    .split(" ");
  return words.map((word) => (word.length < SHORTEST ? word : mended(word))).join(" ");
}

function mended(word: string): string {
  if (LONG_WORDS.includes(word)) return word;
  return LONG_WORDS.find((long) => long[0] === word[0] && isOneSlip(word, long)) ?? word;
}

/** One letter too many, missing, wrong, or two swapped. */
function isOneSlip(word: string, long: string): boolean {
  const longer = Math.max(word.length, long.length);
  if (longer - Math.min(word.length, long.length) > 1) return false;
  let start = 0;
  while (start < longer && word[start] === long[start]) start += 1;
  const rest = word.slice(start);
  const meant = long.slice(start);
  if (rest.length > meant.length) return rest.slice(1) === meant;
  if (rest.length < meant.length) return rest === meant.slice(1);
  const swapped = rest[0] === meant[1] && rest[1] === meant[0] && rest.slice(2) === meant.slice(2);
  return swapped || rest.slice(1) === meant.slice(1);
}
