import { type Api, InputFile } from "grammy";
import type { InlineKeyboardMarkup } from "grammy/types";
import type { Button } from "../../core/reply.ts";
import type { Outbox, OutboxBody, OutboxRow } from "../../db/outbox.ts";
import { failureText, type Log } from "../log.ts";
import type { Courier, Sending } from "../sender.ts";
import { within } from "./deadline.ts";
import { isRefusedEdit, isUnchanged, sendingOfFailure } from "./failure.ts";
import { CAPTION_LENGTH_MAX, htmlParts } from "./markup.ts";

type FileBody = OutboxBody & { kind: "file" };
type EditBody = OutboxBody & { kind: "edit" };
export type MakeFile = (
  make: FileBody["make"],
) => Promise<{ name: string } & ({ bytes: Uint8Array } | { path: string })>;

/** The most bytes that a button's data may have (Bot API, InlineKeyboardButton). */
const BUTTON_BYTES_MAX = 64;
const TEXT_SECONDS_MAX = 30;
const FILE_SECONDS_MAX = 120;
const NOT_MADE = "I could not make that file. The bot's log says why.";

/** Sends outbox rows through the Bot API. A row in several messages goes on where it stopped, while this runs. */
export function createCourier(deps: {
  api: Api;
  outbox: Pick<Outbox, "get">;
  makeFile: MakeFile;
  log: Log;
}): Courier {
  const { api, outbox, makeFile, log } = deps;
  const partsSent = new Map<number, number>();

  async function sendText(row: OutboxRow, text: string, buttons: Button[][], signal: AbortSignal) {
    const sound = row.body.kind === "text" && row.body.silent ? { disable_notification: true } : {};
    const parts = htmlParts(text);
    let message: number | null = null;
    for (let index = partsSent.get(row.id) ?? 0; index < parts.length; index++) {
      const isLast = index === parts.length - 1;
      const markup = isLast ? markupOf(buttons, log) : undefined;
      const replyTo = index === 0 ? replyParameters(row) : {};
      const options = { ...plain, ...sound, ...replyTo, ...(markup ? { reply_markup: markup } : {}) };
      const sent = await within(TEXT_SECONDS_MAX, signal, (either) =>
        api.sendMessage(row.chat, parts[index]!, options, either),
      );
      message = sent.message_id;
      partsSent.set(row.id, index + 1);
    }
    partsSent.delete(row.id);
    return message;
  }

  /** Changes a message; what cannot be changed is sent as a message of its own where it says something new. */
  async function editOrSend(row: OutboxRow, body: EditBody, signal: AbortSignal): Promise<number | null> {
    const { reply, orSend } = body;
    const send = () => sendText(row, reply.text, reply.buttons ?? [], signal);
    const isWhole = htmlParts(reply.text).length === 1;
    const message = isWhole || !orSend ? outbox.get(body.outbox)?.message : null;
    if (!message) return orSend ? send() : null;
    try {
      await edit(row, { body, message }, signal);
      return null;
    } catch (error) {
      if (orSend && isRefusedEdit(error)) return send();
      throw error;
    }
  }

  async function edit(
    row: OutboxRow,
    { body, message }: { body: EditBody; message: string },
    signal: AbortSignal,
  ): Promise<void> {
    const [part] = htmlParts(body.reply.text);
    if (!part) return;
    const markup = markupOf(body.reply.buttons ?? [], log);
    const options = { ...plain, ...(markup ? { reply_markup: markup } : {}) };
    await within(TEXT_SECONDS_MAX, signal, (either) =>
      api.editMessageText(row.chat, Number(message), part, options, either),
    );
  }

  async function sendFile(row: OutboxRow, body: FileBody, signal: AbortSignal): Promise<number | null> {
    const [caption] = htmlParts(body.caption, CAPTION_LENGTH_MAX);
    const options = { parse_mode: "HTML" as const, ...(caption ? { caption } : {}), ...replyParameters(row) };
    const known = body.make.args["file"];
    // A picture that a person sent stays with Telegram and goes back out by its id there.
    if (body.make.what === "picture" && typeof known === "string") {
      const sendAgain = (either: never) => api.sendPhoto(row.chat, known, options, either);
      return (await within(FILE_SECONDS_MAX, signal, sendAgain)).message_id;
    }
    const made = await makeFile(body.make).catch((error: unknown) => {
      log.error("file not made", { row: row.id, what: body.make.what, why: failureText(error) });
      return null;
    });
    if (!made) return sendText(row, NOT_MADE, [], signal);
    const file = new InputFile("bytes" in made ? made.bytes : made.path, made.name);
    const isPicture = /\.(?:png|jpe?g)$/i.test(made.name);
    const send = (either: never): Promise<{ message_id: number }> =>
      isPicture
        ? api.sendPhoto(row.chat, file, options, either)
        : api.sendDocument(row.chat, file, options, either);
    return (await within(FILE_SECONDS_MAX, signal, send)).message_id;
  }

  async function deliver(row: OutboxRow, signal: AbortSignal): Promise<number | null> {
    switch (row.body.kind) {
      case "text":
        return sendText(row, row.body.reply.text, row.body.reply.buttons ?? [], signal);
      case "edit":
        return editOrSend(row, row.body, signal);
      case "file":
        return sendFile(row, row.body, signal);
    }
  }

  return {
    async send(row, signal): Promise<Sending> {
      // Replies of the terminal chat on the same ledger wait for the terminal.
      if (!/^-?\d+$/.test(row.chat)) return { kind: "later", afterSeconds: 3600, why: "not a Telegram chat" };
      try {
        const message = await deliver(row, signal);
        return { kind: "sent", message: message === null ? null : String(message) };
      } catch (error) {
        return isUnchanged(error) ? { kind: "sent", message: null } : sendingOfFailure(error);
      }
    },
  };
}

const plain = { parse_mode: "HTML" as const, link_preview_options: { is_disabled: true } };

function replyParameters(row: OutboxRow) {
  if (!row.replyTo || !/^\d+$/.test(row.replyTo)) return {};
  return { reply_parameters: { message_id: Number(row.replyTo), allow_sending_without_reply: true } };
}

/** Telegram refuses a whole message for one button with too much data, so such a button is left out. */
function markupOf(buttons: Button[][], log: Log): InlineKeyboardMarkup | undefined {
  const isFit = (button: Button) => {
    const isShort = Buffer.byteLength(button.press) <= BUTTON_BYTES_MAX;
    if (!isShort) log.error("button left out: too much data", { label: button.label });
    return isShort;
  };
  const rows = buttons
    .map((row) => row.filter(isFit).map(({ label, press }) => ({ text: label, callback_data: press })))
    .filter((row) => row.length > 0);
  return rows.length > 0 ? { inline_keyboard: rows } : undefined;
}
