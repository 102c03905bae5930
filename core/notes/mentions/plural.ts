/** The everyday English plural of a name: bench → benches, chest of drawers → chests of drawers. */
export function pluralOf(name: string): string {
  const at = name.search(/ (?:of|with|on|for) /);
  if (at !== -1) return pluralOf(name.slice(0, at)) + name.slice(at);
  if (/(?:s|x|z|ch|sh)$/.test(name)) return `${name}es`;
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  if (/knife$/.test(name)) return `${name.slice(0, -2)}ves`;
  if (/(?:shelf|leaf)$/.test(name)) return `${name.slice(0, -1)}ves`;
  return `${name}s`;
}

/** The singular of a noun nobody listed: "whatnots" → "whatnot". */
export function singularOf(noun: string): string {
  if (/(?:shelves|leaves)$/.test(noun)) return `${noun.slice(0, -3)}f`;
  if (/ies$/.test(noun) && noun.length > 4) return `${noun.slice(0, -3)}y`;
  if (/(?:ches|shes|sses|xes|zes)$/.test(noun)) return noun.slice(0, -2);
  if (/[^su]s$/.test(noun) && noun.length > 3) return noun.slice(0, -1);
  return noun;
}
