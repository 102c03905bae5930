import { Bot } from "grammy";
import { failureText } from "../log.ts";
import type { TelegramSettings } from "../settings.ts";
import { createDirectTalk } from "./direct.ts";
import { createGate } from "./gate.ts";
import { createHearing, type HearingDeps } from "./hearing.ts";
import { fetchForGrammy } from "./http.ts";

/** The kinds of update that the bot asks for; any other that comes all the same is passed over. */
export const ALLOWED_UPDATES = ["message", "edited_message", "callback_query", "my_chat_member"] as const;

interface BotDeps
  extends Pick<
    HearingDeps,
    "ledger" | "conversation" | "returning" | "stopping" | "now" | "log" | "onStored"
  > {
  settings: Pick<TelegramSettings, "token" | "apiRoot">;
  /** Called with the name of whoever has just become the owner by the pairing link. */
  onPaired(name: string): void;
}

/** A bot that speaks to nobody yet, without handlers. */
export function createClient({ token, apiRoot }: Pick<TelegramSettings, "token" | "apiRoot">): Bot {
  // The type is that of grammY's default client, a package for old platforms.
  return new Bot(token, { client: { apiRoot, fetch: fetchForGrammy as never } });
}

/** Where the chat server hands out files. */
export function fileRootOf({ token, apiRoot }: Pick<TelegramSettings, "token" | "apiRoot">): string {
  return `${apiRoot}/file/bot${token}`;
}

/** Puts the handlers on a bot. Gives a function that resolves once no update is being handled. */
export function addHandlers(bot: Bot, deps: BotDeps): () => Promise<void> {
  const { log, stopping, settings } = deps;
  const { api } = bot;
  const direct = createDirectTalk({ api, log, signal: stopping });
  const gate = createGate({ ...deps, direct, leave: (chat) => api.leaveChat(chat) });
  const hearing = createHearing({ ...deps, api, direct, gate, fileRoot: fileRootOf(settings) });
  let inHand: Promise<void> = Promise.resolve();

  bot.use((context, next) => {
    // Not handled and, since nothing more is confirmed while stopping, delivered again at the next start.
    if (stopping.aborted) return;
    inHand = next().catch((error: unknown) => {
      log.error("update failed", { update: context.update.update_id, why: failureText(error) });
    });
    return inHand;
  });
  bot.on("message", ({ message, update }) => hearing.message(message, update));
  bot.on("edited_message", ({ editedMessage, update }) => hearing.message(editedMessage, update));
  bot.on("callback_query", ({ callbackQuery, update }) => hearing.press(callbackQuery, update));
  bot.on("my_chat_member", ({ myChatMember }) => {
    const { chat, new_chat_member: me } = myChatMember;
    if (chat.type !== "private" && me.status !== "left" && me.status !== "kicked") gate.decline(chat.id);
  });
  return () => inHand;
}
