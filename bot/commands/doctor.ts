import { counted } from "../../core/answers/wording.ts";
import { type Examination, examine } from "../../db/doctor.ts";
import { readEnvironment } from "../environment.ts";
import { readSettings } from "../settings.ts";

function wellText({ notes, facts, standing, pieces }: Examination["counts"]): string {
  const history = `${counted(facts, "fact")} (${standing} standing)`;
  return `All is well: ${history}, ${counted(notes, "note")}, ${counted(pieces, "piece")}.`;
}

/** Examines the ledger of the data directory and says what is wrong; exits with 1 where anything is. */
function printFindings(): void {
  const read = readSettings({ DATA_DIR: readEnvironment()["DATA_DIR"] });
  if (read.kind === "refused") {
    console.error(read.problems.join("\n"));
    process.exitCode = 2;
    return;
  }
  const { directory } = read.settings;
  const examination = examine(directory);
  if (!examination) {
    console.log(`No ledger has been begun in ${directory}.`);
  } else if (examination.findings.length === 0) {
    console.log(wellText(examination.counts));
  } else {
    for (const { check, detail } of examination.findings) console.log(`${check}: ${detail}`);
    console.log(
      `${counted(examination.findings.length, "finding")}. Nothing was changed. ` +
        "A backup can be put in place with: npm run restore FILE",
    );
    process.exitCode = 1;
  }
}

printFindings();
