import type { Connection } from "./connection.ts";
import { seenUpdates } from "./schema.ts";
import { rowWriter } from "./statements.ts";

interface SeenUpdates {
  /** Marks a delivery as handled; false where it was before. The unique key decides, not a look beforehand. */
  claim(key: string): boolean;
}

/** The deliveries that a ledger has handled. */
export function openSeenUpdates(connection: Connection): SeenUpdates {
  const write = rowWriter(connection, seenUpdates, "keep");
  return { claim: (key) => write.run({ key }) !== null };
}
