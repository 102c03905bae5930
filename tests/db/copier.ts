import { backUp } from "../../db/backup.ts";
import { openReader } from "../../db/open.ts";

// Makes backups over and over until it is killed. Argument: the data directory.
const [directory = ""] = process.argv.slice(2);
const opened = openReader(directory);
if (opened.kind !== "open") throw new Error(JSON.stringify(opened));
console.log("copying");
while (true) {
  const result = backUp(opened.reader.connection, directory, "2026-05-09");
  if (result.kind !== "made") throw new Error(result.why);
}
