/** Which classes something is in, or asks for: one bit each, in four numbers of 32. */
export interface Bits {
  a: number;
  b: number;
  c: number;
  d: number;
}

/** So many classes have a bit. */
export const BITS_MAX = 128;

const PARTS = ["a", "b", "c", "d"] as const;

export const noBits = (): Bits => ({ a: 0, b: 0, c: 0, d: 0 });

export function addBit(into: Bits, place: number): void {
  into[PARTS[place >> 5]!] |= 1 << (place & 31);
}

/** The bits at some places. */
export function bitsOf(places: readonly number[]): Bits {
  const bits = noBits();
  for (const place of places) addBit(bits, place);
  return bits;
}

export function addBits(into: Bits, { a, b, c, d }: Bits): void {
  into.a |= a;
  into.b |= b;
  into.c |= c;
  into.d |= d;
}

/** Whether two have a class in common. */
export const meet = (one: Bits, other: Bits): boolean =>
  ((one.a & other.a) | (one.b & other.b) | (one.c & other.c) | (one.d & other.d)) !== 0;
