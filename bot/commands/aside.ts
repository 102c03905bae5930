import { backUp } from "../../db/backup.ts";
import { openReader } from "../../db/open.ts";
import type { Answer, Task } from "../aside.ts";
import { makeFile } from "../files/make.ts";

// Run by the bot beside itself, for work that would hold up a note. Arguments: the data directory, and the task.
const [directory = "", json = "{}"] = process.argv.slice(2);
const task = JSON.parse(json) as Task;

function answer(said: Answer, bytes = Buffer.alloc(0)): void {
  process.stdout.write(Buffer.concat([Buffer.from(`${JSON.stringify(said)}\n`), bytes]));
}

const opened = openReader(directory);
if (opened.kind !== "open") {
  answer({ kind: "failed", why: opened.kind === "none" ? "there is no ledger" : opened.why });
} else {
  const { reader } = opened;
  try {
    if (task.what === "copy") answer(backUp(reader.connection, directory, task.today));
    else {
      const { name, bytes } = await makeFile(reader, task.make);
      answer({ kind: "file", name }, Buffer.from(bytes));
    }
  } catch (error) {
    answer({ kind: "failed", why: error instanceof Error ? error.message : String(error) });
  } finally {
    reader.close();
  }
}
