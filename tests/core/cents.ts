/** The cents of an amount with exactly two decimals, "-1250.00"; of any other text null. */
export function centsOf(text: string): number | null {
  return /^-?\d{1,13}\.\d{2}$/.test(text) ? Number(text.replace(".", "")) : null;
}
