import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { dayOfInstant } from "../../core/calendar.ts";
import { amountText } from "../../core/money.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import type { Picture } from "../../db/pictures.ts";
import { zoneInForce } from "../zone.ts";

/** The folder of the receipts' pictures, in the data directory and in an export. */
export const RECEIPTS = "receipts";

/** Where the picture of a receipt is kept beside the ledger, by the chat's own name for it. */
export function receiptPath(directory: string, { uniqueFile }: Picture): string {
  return join(directory, RECEIPTS, `${uniqueFile.replace(/[^\w-]/g, "_")}.jpg`);
}

export interface Receipt {
  picture: Picture;
  /** Where its bytes are. */
  path: string;
  /** What an export calls it: "2026-05-09-paint-12.50-3.jpg". */
  name: string;
}

/** The receipts whose bytes are kept here, oldest first. */
export function receiptsKept(ledger: LedgerReader): Receipt[] {
  const zone = zoneInForce(undefined, ledger.settings);
  const directory = dirname(ledger.connection.path);
  return ledger.pictures.receipts().flatMap((picture) => {
    const path = receiptPath(directory, picture);
    if (!existsSync(path)) return [];
    const root = ledger.note(picture.note)?.root ?? picture.note;
    const spent = ledger.standingFactsOf(root).find(({ kind }) => kind === "spend");
    const what = spent?.kind === "spend" ? spent.data.what : "";
    const words = [
      spent?.day ?? dayOfInstant(picture.taken, zone),
      what.toLowerCase().replace(/[^a-z0-9]+/g, "-"),
      amountText(spent?.amount ?? 0),
      picture.id,
    ];
    return [{ picture, path, name: `${words.filter((word) => word !== "").join("-")}.jpg` }];
  });
}
