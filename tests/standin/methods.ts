import type { Form } from "./form.ts";

export interface Button {
  text: string;
  callback_data: string;
}

/** A message that the bot sent, or a change it made to one. */
export interface Sent {
  method: string;
  chat: number;
  message: number;
  /** As a person sees it: escapes undone. For a file, its caption. */
  text: string;
  buttons: Button[][];
  replyTo?: number;
  file?: { name: string; bytes: Buffer } | { id: string };
  at: number;
}

export interface ServerState {
  sent: Sent[];
  files: Map<string, Buffer>;
  nextMessage: () => number;
}

export interface Answer {
  ok: boolean;
  result?: unknown;
  error_code?: number;
  description?: string;
  parameters?: { retry_after?: number };
}

const BOT = {
  id: 4242,
  is_bot: true,
  first_name: "Ledger",
  username: "yard_ledger_bot",
  can_join_groups: true,
  can_read_all_group_messages: false,
  supports_inline_queries: false,
};

/** Answers a call as the Bot API does, limits included. */
export function answerCall(method: string, form: Form, state: ServerState): Answer {
  switch (method) {
    case "getMe":
      return { ok: true, result: BOT };
    case "sendMessage":
    case "sendPhoto":
    case "sendDocument":
      return send(method, form, state);
    case "editMessageText":
    case "editMessageReplyMarkup":
      return edit(method, form, state);
    case "getFile":
      return fileAnswer(String(form.fields["file_id"]), state);
    case "deleteWebhook":
    case "setMyCommands":
    case "answerCallbackQuery":
    case "leaveChat":
    case "sendChatAction":
      return { ok: true, result: true };
    default:
      return refusal(404, "Not Found");
  }
}

function refusal(code: number, description: string): Answer {
  return { ok: false, error_code: code, description };
}

function send(method: string, form: Form, state: ServerState): Answer {
  const read = readContent(method, form);
  if ("ok" in read) return read;
  const sent: Sent = { ...read, method, message: state.nextMessage(), at: Date.now() };
  state.sent.push(sent);
  return { ok: true, result: messageResult(sent) };
}

function edit(method: string, form: Form, state: ServerState): Answer {
  const message = Number(form.fields["message_id"]);
  const chat = Number(form.fields["chat_id"]);
  const before = state.sent.findLast((sent) => sent.chat === chat && sent.message === message);
  if (!before) return refusal(400, "Bad Request: message to edit not found");
  const fields = method === "editMessageText" ? form.fields : { text: before.text, ...form.fields };
  const read = readContent(method, { ...form, fields });
  if ("ok" in read) return read;
  const isSame = read.text === before.text && JSON.stringify(read.buttons) === JSON.stringify(before.buttons);
  if (isSame) return refusal(400, "Bad Request: message is not modified");
  const sent: Sent = { ...read, method, message, at: Date.now() };
  state.sent.push(sent);
  return { ok: true, result: messageResult(sent) };
}

function fileAnswer(id: string, state: ServerState): Answer {
  const bytes = state.files.get(id);
  if (!bytes) return refusal(400, "Bad Request: invalid file_id");
  return {
    ok: true,
    result: { file_id: id, file_unique_id: id, file_size: bytes.length, file_path: `files/${id}` },
  };
}

type Content = Pick<Sent, "chat" | "text" | "buttons" | "replyTo" | "file">;

function readContent(method: string, form: Form): Content | Answer {
  const { fields } = form;
  const isFile = method === "sendPhoto" || method === "sendDocument";
  const raw = String(fields[isFile ? "caption" : "text"] ?? "");
  const isHtml = fields["parse_mode"] === "HTML";
  if (isHtml && !isWellFormed(raw)) return refusal(400, "Bad Request: can't parse entities");
  const text = isHtml ? unescapeHtml(raw) : raw;
  if (!isFile && text.trim() === "") return refusal(400, "Bad Request: message text is empty");
  if (text.length > (isFile ? 1024 : 4096)) return refusal(400, "Bad Request: message is too long");
  const buttons = buttonsOf(fields["reply_markup"]);
  const isOver = buttons.flat().some((button) => Buffer.byteLength(button.callback_data) > 64);
  if (isOver) return refusal(400, "Bad Request: BUTTON_DATA_INVALID");
  const replyTo = (fields["reply_parameters"] as { message_id?: number } | undefined)?.message_id;
  const file = isFile
    ? { file: form.files[0] ?? { id: String(fields[method === "sendPhoto" ? "photo" : "document"]) } }
    : {};
  return { chat: Number(fields["chat_id"]), text, buttons, ...(replyTo ? { replyTo } : {}), ...file };
}

/** Only the three escapes and the simplest tags are let through: the bot needs no more. */
function isWellFormed(html: string): boolean {
  return !/[<>]|&(?!(?:lt|gt|amp|quot);)/.test(html.replace(/<\/?(?:b|i|pre|code)>/g, ""));
}

function unescapeHtml(html: string): string {
  return html
    .replace(/<\/?(?:b|i|pre|code)>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
}

function buttonsOf(markup: unknown): Button[][] {
  const value = typeof markup === "string" ? (JSON.parse(markup) as unknown) : markup;
  return (value as { inline_keyboard?: Button[][] } | undefined)?.inline_keyboard ?? [];
}

function messageResult(sent: Sent): Record<string, unknown> {
  const photo =
    sent.method === "sendPhoto"
      ? { photo: [{ file_id: `sent-${sent.message}`, file_unique_id: "s", width: 1, height: 1 }] }
      : {};
  return {
    message_id: sent.message,
    date: Math.floor(sent.at / 1000),
    chat: { id: sent.chat, type: "private" },
    text: sent.text,
    ...photo,
  };
}
