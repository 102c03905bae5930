import { decide, followUp } from "../../core/decide/decide.ts";
import { type Matter, newMatter } from "../../core/decide/decision.ts";
import { answerQuestion, setNudge } from "./asking.ts";
import { fixNote } from "./fixing.ts";
import { impossibleText, keepOutcome } from "./outcome.ts";
import { openQuestion } from "./questions.ts";
import { deskOf, type Turn } from "./turn.ts";
import { undoNote } from "./undoing.ts";

/** Which message the facts belong to, and which one is answered by undo in a reply. */
interface Belonging {
  /** The first revision of the message that the facts are a part of. */
  root: number;
  replyRoot?: number | undefined;
}

/** Decides matters one by one, in order: the clear ones are recorded, the others asked or refused. */
export function decideAll(turn: Turn, matters: readonly Matter[], belonging: Belonging): void {
  const queue = [...matters];
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const pieces = decideOne(turn, matter, belonging);
    if (pieces) queue.unshift(...followUp(matter, pieces));
  }
}

/** The pieces that were recorded, for what waits for "it"; null where nothing was. */
function decideOne(turn: Turn, matter: Matter, belonging: Belonging): number[] | null {
  const { reading } = matter;
  switch (reading.kind) {
    case "ask":
      answerQuestion(turn, reading);
      return null;
    case "undo":
      undoNote(turn, belonging.replyRoot);
      return null;
    case "fix":
      fixNote(turn, reading, belonging.replyRoot);
      return null;
    case "nudge":
      setNudge(turn, reading);
      return null;
    default:
      return decideFact(turn, matter, belonging);
  }
}

function decideFact(turn: Turn, matter: Matter, belonging: Belonging): number[] | null {
  const { reading, said } = matter;
  const decision = decide(matter, { ...deskOf(turn), today: said });
  switch (decision.kind) {
    case "refuse":
      refuse(turn, matter, decision.why);
      return null;
    case "ask":
      openQuestion(turn, matter, decision.ask, belonging.root);
      return null;
    case "record": {
      const { person: author, note } = turn;
      const result = turn.ledger.record({ note, author, facts: decision.facts, root: belonging.root });
      if (result.kind === "impossible") {
        refuse(turn, matter, impossibleText(turn, result));
        return null;
      }
      keepOutcome(turn, result.facts, reading);
      if (decision.ask) {
        openQuestion(turn, newMatter(decision.ask.reading, said), decision.ask.ask, belonging.root);
      }
      return result.facts.flatMap((fact) => fact.pieces);
    }
  }
}

function refuse(turn: Turn, matter: Matter, why: string): void {
  const { text, line } = matter.reading;
  turn.refused.push({ text, line, why });
  for (const waiting of matter.waiting) {
    turn.refused.push({
      text: waiting.text,
      line: waiting.line,
      why: "It goes with the one before: send both again.",
    });
  }
}
