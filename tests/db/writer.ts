import { openLedger } from "../../db/open.ts";
import { buy, list } from "./ledgers.ts";

// Writes note after note until it is killed, printing the number of each once it is committed. Arguments: the
// data directory, and "once" to write nothing and only hold the ledger open.
const [directory = "", mode] = process.argv.slice(2);
const opened = openLedger({ directory, now: 0 });
if (opened.kind !== "open") {
  console.log(opened.kind);
  process.exit(3);
}
const { ledger } = opened;
console.log("open");
if (mode === "hold") setInterval(() => {}, 1000);
else {
  const author = ledger.members.byUser("1001")?.id ?? 0;
  let number = ledger.connection.sqlite.prepare("select count(*) from notes").pluck().get() as number;
  while (true) {
    number += 1;
    ledger.transaction(() => {
      ledger.claimUpdate(`update ${number}`);
      const said = { said: number, handled: number };
      const note = ledger.addNote({
        chat: "home",
        message: `${number}`,
        text: "bought dresser 30",
        author,
        ...said,
      });
      const facts = [buy(ledger, 3000), list(ledger.nextPiece, 19000)];
      const result = ledger.record({ note, author, facts });
      if (result.kind !== "recorded") throw new Error(JSON.stringify(result));
      ledger.setNoteState(note, "recorded");
      const body = { kind: "text", reply: { text: `Bought #${number}` } } as const;
      ledger.outbox.queue({ chat: "home", about: note, body });
    });
    process.stdout.write(`${number}\n`);
  }
}
