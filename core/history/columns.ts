import type { HistoryProblem } from "./row.ts";

export type Column = "name" | "bought" | "price" | "materials" | "soldOn" | "soldFor";

/** Headings as people write them, letters and digits only. "bought" and "sold" are told apart by what is below. */
const HEADINGS: Record<Column, readonly string[]> = {
  name: ["name", "piece", "item", "furniture", "what", "description", "title"],
  bought: [
    "boughton",
    "datebought",
    "boughtdate",
    "purchasedon",
    "purchasedate",
    "buydate",
    "dateofpurchase",
  ],
  price: [
    "price",
    "boughtfor",
    "paid",
    "paidfor",
    "pricepaid",
    "cost",
    "purchaseprice",
    "buyprice",
    "buyingprice",
  ],
  materials: [
    "materials",
    "material",
    "materialcost",
    "materialscost",
    "supplies",
    "parts",
    "spent",
    "expenses",
  ],
  soldOn: ["soldon", "datesold", "solddate", "saledate", "selldate", "dateofsale"],
  soldFor: ["soldfor", "saleprice", "soldprice", "sellprice", "sellingprice", "pricesold", "proceeds"],
};

/** Headings that may stand over days or over amounts: what the first filled cell is decides. */
const AMBIGUOUS: ReadonlyMap<string, { day: Column; amount: Column }> = new Map([
  ["bought", { day: "bought", amount: "price" }],
  ["purchased", { day: "bought", amount: "price" }],
  ["sold", { day: "soldOn", amount: "soldFor" }],
  ["sale", { day: "soldOn", amount: "soldFor" }],
]);

/** Which column means what, by its heading; the first of several that mean the same counts. */
export function columnsOf(
  headings: readonly string[],
  rows: readonly (readonly string[])[],
): { found: Map<Column, number>; ignored: string[] } {
  const found = new Map<Column, number>();
  const ignored: string[] = [];
  for (const [index, heading] of headings.entries()) {
    const plain = heading.toLowerCase().replace(/[^a-z0-9]/g, "");
    const either = AMBIGUOUS.get(plain);
    const filled = rows.map((cells) => cells[index] ?? "").find((cell) => cell !== "") ?? "";
    const column = either
      ? either[/^\d+[-/]\d+[-/]\d+$/.test(filled) ? "day" : "amount"]
      : (Object.keys(HEADINGS) as Column[]).find((name) => HEADINGS[name].includes(plain));
    if (column && !found.has(column)) found.set(column, index);
    else if (heading !== "") ignored.push(heading);
  }
  return { found, ignored };
}

/** The needed columns that no heading names, as one problem of the whole file. */
export function missingColumns(found: ReadonlyMap<Column, number>): HistoryProblem | null {
  const needed = [
    ["name", "name"],
    ["bought", "bought on"],
    ["price", "price"],
  ] as const;
  const missing = needed.filter(([column]) => !found.has(column)).map(([, heading]) => `"${heading}"`);
  if (missing.length === 0) return null;
  const rest = "The first row names the columns: name, bought on, price, materials, sold on, sold for.";
  return { row: 0, why: `No column ${missing.join(" or ")}. ${rest}` };
}
