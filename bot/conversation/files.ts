import { backupBody, exportBodies } from "../files/bodies.ts";
import type { Turn } from "./turn.ts";

/** Sends the books as a workbook and CSV files after the reply; they are made when they are sent. */
export function queueExport(turn: Turn): void {
  const { today: through, currency } = turn;
  turn.spoken.push("Your books as a spreadsheet. One moment.");
  turn.files.push(...exportBodies({ through, currency }));
}

/** Sends a backup after the reply; it is made when it is sent. */
export function queueBackup(turn: Turn): void {
  turn.spoken.push("A backup of your books as they are now. One moment.");
  turn.files.push(backupBody(turn.today));
}
