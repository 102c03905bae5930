import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Conversation } from "../conversation/incoming.ts";
import { beat } from "../health.ts";
import { startIdleWork, warmUp } from "../idle.ts";
import { createJoiner } from "../joining.ts";
import { failureText, type Log } from "../log.ts";
import { appointOwner, pairingCode, telegramOwner } from "../members.ts";
import { pairingText, type Screen } from "../pairing.ts";
import type { Schedule, ScheduleDeps } from "../schedule/schedule.ts";
import { startSender } from "../sender.ts";
import { API_ROOT, type TelegramSettings } from "../settings.ts";
import { createSilenceWatch } from "../silence.ts";
import { addHandlers, createClient, fileRootOf } from "./bot.ts";
import { createCatchingUp } from "./catching-up.ts";
import { publishCommands } from "./commands.ts";
import { createCourier, type MakeFile } from "./courier.ts";
import { type PollingDeps, type PollingEnd, poll, stopPolling } from "./polling.ts";
import { createReceiptKeeper } from "./receipts.ts";
import { createReturning } from "./returning.ts";

/** How long a handler, then a send, may take to end once the bot is to stop. Both together: under five seconds. */
const HANDLER_MS_MAX = 2000;
const SEND_MS_MAX = 2000;

const UNREACHABLE = "Telegram cannot be reached. See that this computer is online: I go on trying.";
const ANOTHER_COPY =
  "Another copy of this bot is running with the same token. I wait a minute for it to stop.";

interface RunDeps {
  settings: TelegramSettings;
  ledger: Ledger;
  conversation: Conversation;
  makeFile: MakeFile;
  /** What the bot says of its own accord, at its hours; it calls `wake` when it has queued something. */
  startSchedule(of: Pick<ScheduleDeps, "wake" | "heardAll">): Schedule;
  zone: () => string;
  /** Aborts when the process is asked to end. */
  stopping: AbortSignal;
  now: () => Instant;
  log: Log;
  /** Shows what concerns whoever started the bot, beside the log. */
  show(words: string): void;
  /** How the pairing link is shown. */
  screen: Screen;
  /** How long another poller is waited out. */
  conflict?: PollingDeps["conflict"];
}

/** Runs the bot on Telegram until `stopping` aborts or Telegram will not have it. The ledger stays open. */
export async function runTelegram(deps: RunDeps): Promise<PollingEnd> {
  const { settings, ledger, makeFile, now, log } = deps;
  const ending = new AbortController();
  const end = () => ending.abort();
  deps.stopping.addEventListener("abort", end, { once: true });
  if (deps.stopping.aborted) end();
  const stopping = ending.signal;

  if (settings.owner) nameOwner(ledger, settings.owner, now());
  const bot = createClient(settings);
  const courier = createCourier({ api: bot.api, outbox: ledger.outbox, makeFile, log });
  const returning = createReturning(ledger);
  const sender = startSender({
    ...{ outbox: ledger.outbox, courier, now, log },
    join: createJoiner(deps),
    onUnreachable: returning.lost,
  });
  const health = createHealthKeeper({ ...deps, sender, heard: createSilenceWatch(deps) });
  const receipts = createReceiptKeeper({
    ...{ ledger, log, directory: settings.directory },
    ...{ api: bot.api, fileRoot: fileRootOf(settings), signal: stopping },
  });
  const idle = startIdleWork({ ...deps, also: receipts.look });
  const onStored = (isStored: boolean) => {
    health.stored(isStored);
    idle.heard();
    sender.wake();
  };
  const onPaired = (name: string) =>
    deps.show(`${name} is the owner now; the answer is on the phone. Ctrl+C stops the bot.`);
  const handled = addHandlers(bot, { ...deps, returning, stopping, onStored, onPaired });
  const catchingUp = createCatchingUp(now, () => schedule.caughtUp());
  const schedule = deps.startSchedule({ wake: sender.wake, heardAll: catchingUp.isDone });
  const onPolled = () => {
    health.polled();
    sender.wake();
  };
  let endWarmUp = () => {};
  const onStarted = (username: string) => {
    log.info("polling", { bot: username });
    introduce(deps, username);
    // The first poll may wait half a minute for its answer; that Telegram was reached is known now.
    onPolled();
    void publishCommands(bot.api, log);
    endWarmUp = warmUp(ledger);
    receipts.look();
  };
  try {
    await deps.conversation.goOn(() => stopping.aborted);
    const onConflict = () => deps.show(ANOTHER_COPY);
    const onUnreachable = () => deps.show(UNREACHABLE);
    const on = { onPolled, onStarted, onConflict, onUnreachable };
    const polling = poll({ ...deps, ...on, bot, stopping, catchingUp });
    return await Promise.race([polling, aborted(stopping)]);
  } finally {
    end();
    schedule.stop();
    idle.stop();
    endWarmUp();
    await stopPolling(bot);
    await Promise.race([handled(), after(HANDLER_MS_MAX)]);
    await sender.stop(SEND_MS_MAX);
  }
}

function nameOwner(ledger: Ledger, user: string, now: Instant): void {
  ledger.transaction(() => appointOwner(ledger, user, now));
}

/** Keeps what invitations begin with and, while there is no owner, shows the way to become it. */
function introduce({ settings, ledger, now, show, screen }: RunDeps, username: string): void {
  const isPublic = settings.apiRoot === API_ROOT;
  const inviteLink = isPublic ? `https://t.me/${username}?start=` : "/start ";
  const code = ledger.transaction(() => {
    ledger.settings.set("inviteLink", inviteLink);
    const owner = telegramOwner(ledger);
    if (!owner) return pairingCode(ledger, now());
    // A trial in the terminal on the same ledger may have been the owner's last place to talk.
    appointOwner(ledger, owner.user, now());
    return null;
  });
  if (code === null) return;
  show(pairingText(`${inviteLink}${code}`, username, screen));
}

/** A sign of life is a file written and renamed: once in so long is often enough. */
const BEAT_MS = 10_000;

/** Leaves a sign of life after polls, with since when the ledger has not taken what it should store. */
function createHealthKeeper(
  deps: RunDeps & { sender: { failingSince(): Instant | null }; heard: () => boolean },
) {
  const { settings, sender, heard, now, log } = deps;
  let unstoredSince: Instant | null = null;
  let left: { at: Instant; troubleSince: Instant | null } | null = null;
  const stored = (isStored: boolean) => {
    unstoredSince = isStored ? null : (unstoredSince ?? now());
  };
  return {
    stored,
    polled() {
      try {
        if (heard()) stored(true);
      } catch (error) {
        stored(false);
        log.error("the ledger cannot be written", { why: failureText(error) });
      }
      const sign = { at: now(), troubleSince: unstoredSince ?? sender.failingSince() };
      const isNew =
        left?.troubleSince !== sign.troubleSince || Math.abs(sign.at - (left?.at ?? 0)) >= BEAT_MS;
      if (left && !isNew) return;
      try {
        beat(settings.directory, { polled: sign.at, troubleSince: sign.troubleSince });
        left = sign;
      } catch (error) {
        log.error("no sign of life left", { why: failureText(error) });
      }
    },
  };
}

function aborted(signal: AbortSignal): Promise<PollingEnd> {
  return new Promise((resolve) => {
    const stopped = () => resolve({ kind: "stopped" });
    if (signal.aborted) stopped();
    else signal.addEventListener("abort", stopped, { once: true });
  });
}

function after(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds).unref());
}
