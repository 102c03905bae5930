import { counted } from "../../core/answers/wording.ts";
import { DAY_MS, dayOfInstant } from "../../core/calendar.ts";
import { show } from "../../core/money.ts";
import type { Carried } from "../../db/carrying.ts";
import { type Restored, restore, type Summary } from "../../db/restore.ts";
import { readEnvironment } from "../environment.ts";
import { readSettings } from "../settings.ts";
import { machineZone } from "../zone.ts";

const USAGE = "usage: npm run restore FILE (the nightly copies are in the data directory, under backups)";

function summaryText({ notes, standing, pieces, earmarked }: Summary): string {
  return `${notes} notes, ${standing} facts, ${pieces} pieces, ${show(earmarked)} earmarked`;
}

function outcomeText(restored: Restored): string {
  switch (restored.kind) {
    case "no such file":
      return `There is no such file. Nothing was changed.\n${USAGE}`;
    case "locked":
      return "The bot is running on this ledger. Stop it first. Nothing was changed.";
    case "refused": {
      const findings = restored.findings.map(({ check, detail }) => `${check}: ${detail}`);
      return ["This copy is no good, so nothing was changed:", ...findings].join("\n");
    }
    case "failed":
      return `Nothing was changed: ${restored.why}.`;
    case "restored":
      return restoredText(restored);
  }
}

function restoredText(restored: Extract<Restored, { kind: "restored" }>): string {
  const { before, after, kept, carried, members } = restored;
  const was = kept ? "could not be read whole" : "no ledger";
  return [
    "Restored.",
    `Before: ${before ? summaryText(before) : was}`,
    `Now:    ${summaryText(after)}`,
    ...(carried ? carriedLines(carried) : unknownLines(members)),
    ...(kept ? [`The replaced ledger is kept in ${kept}`] : []),
  ].join("\n");
}

/** What the copy did not know: what is lost with it, who stays out, whom to invite again. */
function carriedLines({ lost, out, joined, invitations }: Carried): string[] {
  return [
    ...(lost ? [`Lost: ${counted(lost.notes, "note")} since ${momentOf(lost.since)}`] : ["No note is lost."]),
    ...(out.length > 0
      ? [
          `Taken out after the copy, and still out: ${out.join(", ")}. The bot asks the owner whether to keep it so.`,
        ]
      : []),
    ...(joined.length > 0 ? [`Joined after the copy, to be invited again: ${joined.join(", ")}`] : []),
    ...(invitations > 0
      ? [`${counted(invitations, "invitation")} used or withdrawn since stay worth nothing.`]
      : []),
  ];
}

function unknownLines(members: readonly string[]): string[] {
  return [
    "What was noted after the copy, and who was taken out since, is not known. Open invitations are withdrawn.",
    `In are: ${members.join(", ") || "nobody"}. Take out who should not be: remove member and the number.`,
  ];
}

function momentOf(instant: number): string {
  const format = new Intl.DateTimeFormat("en-US", { dateStyle: "medium", timeStyle: "short" });
  const days = Math.floor((Date.now() - instant) / DAY_MS);
  return `${format.format(instant).replace(/\u202f/g, " ")}${days > 0 ? ` (${counted(days, "day")} ago)` : ""}`;
}

/** Puts a backup in the ledger's place. Exits with 2 for bad use, 1 where nothing was restored. */
function restoreFile(files: string[]): void {
  const { DATA_DIR, TIME_ZONE } = readEnvironment();
  const read = readSettings({ DATA_DIR, TIME_ZONE });
  const [file] = files;
  if (read.kind === "refused" || file === undefined || files.length > 1) {
    console.error(read.kind === "refused" ? read.problems.join("\n") : USAGE);
    process.exitCode = 2;
    return;
  }
  const { directory, zone } = read.settings;
  const now = Date.now();
  const today = dayOfInstant(now, zone ?? machineZone());
  const restored = restore({ directory, file, now, today });
  const isDone = restored.kind === "restored";
  console[isDone ? "log" : "error"](outcomeText(restored));
  process.exitCode = isDone ? 0 : 1;
}

restoreFile(process.argv.slice(2));
