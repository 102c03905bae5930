import type { Message, Update } from "grammy/types";
import type { Instant } from "../../core/calendar.ts";
import type { Incoming } from "../conversation/incoming.ts";
import { wordsOf } from "./commands.ts";

/** Telegram counts seconds, the ledger milliseconds. */
export function instantOf(seconds: number): number {
  return seconds * 1000;
}

/** Whether a number of seconds can be when a message was sent: after the platform began, before the century ends. */
export function isPlausible(seconds: unknown): seconds is number {
  return Number.isSafeInteger(seconds) && Number(seconds) > 1_356_998_400 && Number(seconds) < 4_102_444_800;
}

/**
 * What marks an update as handled. The number alone will not do: after an idle week Telegram may start again
 * from another one, so what the update is about is part of it. A delivery repeated is the same to the letter.
 */
export function updateKey(update: Update): string {
  const message = update.message ?? update.edited_message;
  if (message) {
    const edit = message.edit_date === undefined ? "" : `:${JSON.stringify(message.edit_date).slice(0, 40)}`;
    return `telegram:${update.update_id}:m:${message.chat.id}:${message.message_id}${edit}`;
  }
  return `telegram:${update.update_id}:q:${update.callback_query?.id ?? ""}`;
}

/** A message's words, or those under its picture; "" where it has none. */
export function textOf(message: Message): string {
  return message.text ?? message.caption ?? "";
}

/** A member's message for the conversation. An edit keeps the day on which the message was first sent. */
export function incomingOf(
  message: Message,
  { person, update, isEdit, now }: { person: number; update: string; isEdit: boolean; now: Instant },
): Incoming {
  const replyTo = message.reply_to_message?.message_id;
  const picture = pictureOf(message);
  return {
    person,
    chat: String(message.chat.id),
    message: String(message.message_id),
    text: wordsOf(textOf(message)),
    // A note whose date makes no sense is still a note: it was said when it came.
    said: isPlausible(message.date) ? instantOf(message.date) : now,
    update,
    ...(replyTo === undefined ? {} : { replyTo: String(replyTo) }),
    ...(isEdit ? { edited: true as const, ...revisedAt(message) } : {}),
    ...(picture ? { picture } : {}),
  };
}

function revisedAt({ edit_date }: Message): { revised?: number } {
  return isPlausible(edit_date) ? { revised: instantOf(edit_date) } : {};
}

/** The largest size of a photo; Telegram lists the same picture in several. */
function pictureOf(message: Message): Incoming["picture"] {
  const largest = (message.photo ?? []).reduce<{
    file_id: string;
    file_unique_id: string;
    width: number;
  } | null>((best, size) => (best && best.width >= size.width ? best : size), null);
  return largest ? { file: largest.file_id, unique: largest.file_unique_id } : undefined;
}

const MEDIA = [
  "sticker",
  "voice",
  "video",
  "video_note",
  "audio",
  "animation",
  "document",
  "location",
  "venue",
  "contact",
  "poll",
  "dice",
  "game",
  "story",
  "paid_media",
  "checklist",
] as const;

/** Whether a person meant to say something by it; notices of the chat itself (a pin, a new title) are no talk. */
export function isMedia(message: Message): boolean {
  return MEDIA.some((kind) => kind in message);
}
