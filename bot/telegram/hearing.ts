import type { Api } from "grammy";
import type { CallbackQuery, Message, Update } from "grammy/types";
import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Conversation, Incoming, Press } from "../conversation/incoming.ts";
import { LINES_WHOLE_MAX } from "../conversation/long.ts";
import { failureText, type Log } from "../log.ts";
import { Albums } from "./album.ts";
import type { DirectTalk } from "./direct.ts";
import { fetchDocument } from "./document.ts";
import type { Gate } from "./gate.ts";
import { incomingOf, isMedia, textOf, updateKey } from "./incoming.ts";
import { TEXT_LENGTH_MAX } from "./markup.ts";
import type { Returning } from "./returning.ts";
import { answerUnheard, NOTHING_STORED, type Why } from "./unheard.ts";

export interface HearingDeps {
  api: Api;
  ledger: Ledger;
  conversation: Conversation;
  gate: Gate;
  direct: DirectTalk;
  returning: Returning;
  /** Where files are fetched from; the token is in it. */
  fileRoot: string;
  /** Aborts when the bot is to stop: what is not stored by then is left for the next start. */
  stopping: AbortSignal;
  now: () => Instant;
  log: Log;
  /** Called after each attempt to store something, with whether it could be stored. */
  onStored(isStored: boolean): void;
}

interface Hearing {
  message(message: Message, update: Update): Promise<void>;
  press(query: CallbackQuery, update: Update): Promise<void>;
}

/** Takes messages and presses from members to the conversation, and answers honestly for what is no note. */
export function createHearing(deps: HearingDeps): Hearing {
  const { ledger, conversation, gate, direct, returning, stopping, now, log, onStored } = deps;
  const albums = new Albums();

  /**
   * Runs one handling. The conversation stores its own failures, so what throws here is a ledger that takes
   * nothing (a full disk): all that is left is to say so past it.
   */
  async function guarded(chat: number, handle: () => void | Promise<void>): Promise<void> {
    try {
      await handle();
      onStored(true);
    } catch (error) {
      log.error("nothing stored", { why: failureText(error) });
      direct.say(chat, NOTHING_STORED);
      onStored(false);
    }
  }

  async function hear(message: Message, incoming: Incoming): Promise<void> {
    const isTooLong = incoming.text.length > TEXT_LENGTH_MAX && !incoming.document;
    if (isTooLong) answerUnheard(ledger, incoming, "too long");
    else if (isOfManyLines(incoming)) await conversation.hearLong(incoming, () => stopping.aborted);
    else if (incoming.text.trim() !== "" || incoming.picture) {
      conversation.hear(incoming, { leavesLong: true });
      await conversation.goOn(() => stopping.aborted);
    } else if (isMedia(message) && !incoming.edited) answerUnheard(ledger, incoming, "not text");
  }

  /** The incoming with the text of the file that came with it, or why that file became no text. */
  async function withDocument(
    message: Message,
    incoming: Incoming,
  ): Promise<{ incoming: Incoming; why?: Why }> {
    if (!message.document || incoming.edited) return { incoming };
    const fetched = await fetchDocument(message.document, { ...deps, signal: stopping });
    if (fetched.kind === "text") {
      return { incoming: { ...incoming, text: fetched.text, document: { name: fetched.name } } };
    }
    if (fetched.kind === "failed") return { incoming, why: "not fetched" };
    // Words under a file that is no text are a note of their own.
    return fetched.why === "not text" ? { incoming } : { incoming, why: fetched.why };
  }

  return {
    async message(message, update) {
      const { from, chat } = message;
      if (chat.type !== "private") return gate.decline(chat.id);
      // A private chat has the id of its person; anything else there speaks in another's name.
      if (!from || from.is_bot || from.id !== chat.id) return;
      const member = gate.admit(from, textOf(message));
      if (!member) return;
      const isEdit = update.edited_message !== undefined;
      const of = { person: member.id, update: updateKey(update), isEdit, now: now() };
      const plain = incomingOf(message, of);
      const leader = albums.leader(message);
      const incoming =
        leader === undefined ? plain : { replyTo: String(leader), ...plain, follows: true as const };
      const { incoming: whole, why: unheard } = await withDocument(message, incoming);
      if (stopping.aborted) return;
      await guarded(chat.id, async () => {
        returning.back(incoming.chat);
        if (unheard) answerUnheard(ledger, incoming, unheard);
        else await hear(message, whole);
      });
    },
    async press(query, update) {
      direct.once("answer press", () => deps.api.answerCallbackQuery(query.id));
      const { message, data, from } = query;
      if (message?.chat.id !== from.id || data === undefined) return;
      const member = ledger.members.byUser(String(from.id));
      if (!member || member.removed !== null) return;
      const press: Press = {
        person: member.id,
        chat: String(message.chat.id),
        message: String(message.message_id),
        press: data,
        said: now(),
        update: updateKey(update),
      };
      await guarded(message.chat.id, async () => {
        returning.back(press.chat);
        conversation.press(press, { leavesLong: true });
        await conversation.goOn(() => stopping.aborted);
      });
    },
  };
}

function isOfManyLines({ text, document }: Incoming): boolean {
  if (document?.name.toLowerCase().endsWith(".csv")) return false;
  return (
    text.length > TEXT_LENGTH_MAX || text.split(/\r\n|\r|\n/, LINES_WHOLE_MAX + 2).length > LINES_WHOLE_MAX
  );
}
