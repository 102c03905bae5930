import { existsSync, renameSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { createPrivateFolder } from "../../db/connection.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Picture } from "../../db/pictures.ts";
import { receiptPath } from "../files/receipts.ts";
import { failureText, type Log } from "../log.ts";
import { type FetchDeps, fetchFile } from "./fetched.ts";

/** A photo of the chat is far smaller. */
const RECEIPT_BYTES_MAX = 10_000_000;
/** Until the next start; what is not there then is fetched again. */
const TRIES_MAX = 5;

/**
 * Keeps the pictures of receipts beside the ledger, since the chat alone is no place for what a tax office may ask
 * for. `look` fetches what is not here yet, one at a time and in the background: what fails is tried at later looks.
 */
export function createReceiptKeeper(deps: FetchDeps & { ledger: Ledger; directory: string; log: Log }): {
  look(): void;
} {
  const { ledger, directory, log, signal } = deps;
  const tries = new Map<number, number>();
  let isLooking = false;

  async function keep(picture: Picture): Promise<void> {
    const path = receiptPath(directory, picture);
    const bytes = await fetchFile(picture.file, RECEIPT_BYTES_MAX, deps);
    if (!bytes) throw new Error("larger than what is kept");
    createPrivateFolder(dirname(path));
    writeFileSync(`${path}.new`, bytes, { mode: 0o600 });
    renameSync(`${path}.new`, path);
  }

  async function keepAll(): Promise<void> {
    for (const picture of ledger.pictures.receipts()) {
      const tried = tries.get(picture.id) ?? 0;
      if (signal.aborted) return;
      if (tried >= TRIES_MAX || existsSync(receiptPath(directory, picture))) continue;
      tries.set(picture.id, tried + 1);
      await keep(picture).catch((error: unknown) => {
        if (!signal.aborted) log.warn("receipt not kept", { picture: picture.id, why: failureText(error) });
      });
    }
  }

  return {
    look() {
      if (isLooking || signal.aborted) return;
      isLooking = true;
      void keepAll()
        .catch((error: unknown) => log.warn("receipts not kept", { why: failureText(error) }))
        .finally(() => {
          isLooking = false;
        });
    },
  };
}
