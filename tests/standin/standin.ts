import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { type Form, readForm } from "./form.ts";
import { type Answer, answerCall, type Sent, type ServerState } from "./methods.ts";
import { type Update, UpdateQueue } from "./updates.ts";

export type { Sent } from "./methods.ts";

/** How a call fails. "lost": the server did what was asked, and the answer never arrives. */
export type Failure =
  | { kind: "status"; code: number; retryAfter?: number; description?: string }
  | { kind: "dropped" }
  /** The connection stays open and nothing comes. */
  | { kind: "hangs" }
  | { kind: "lost" };

export interface Person {
  id: number;
  first_name: string;
  username?: string;
}

/** A machine that does ten things at once may take this long over one of them: what is waited for comes, or never. */
const WAIT_MS_MAX = 120_000;

export const OWNER: Person = { id: 1001, first_name: "Robin", username: "robin_rowan" };

export interface MessageOptions {
  from?: Person;
  /** A chat's id, the person's own private chat by default; below zero: a group. */
  chat?: number;
  /** Milliseconds since 1970; now by default. */
  date?: number;
  replyTo?: number;
  /** Further fields of the message. */
  also?: Record<string, unknown>;
}

/** A Bot API server of our own on loopback, for one bot: it speaks what the bot uses, and fails when told. */
export class Standin {
  readonly token: string;
  readonly calls: { method: string; fields: Record<string, unknown>; at: number }[] = [];
  readonly #server: Server;
  readonly #updates: UpdateQueue;
  readonly #state: ServerState;
  readonly #failures: { method: string; failure: Failure; times: number }[] = [];
  readonly #taken = new Set<Sent>();
  /** When each message was sent, in seconds. */
  readonly #dates = new Map<number, number>();
  #poll: AbortController | undefined;
  #isDown = false;
  #nextMessage = 1;
  #nextQuery = 1;

  constructor(token: string, firstUpdate: number) {
    this.token = token;
    this.#updates = new UpdateQueue(firstUpdate);
    this.#state = { sent: [], files: new Map(), nextMessage: () => this.#nextMessage++ };
    this.#server = createServer((request, response) => {
      this.#serve(request, response).catch(() => request.socket.destroy());
    });
  }

  /** Listens on a port of loopback: any free one, or a given one to come back after an outage. */
  async open(port = 0): Promise<void> {
    await new Promise<void>((resolve) => this.#server.listen(port, "127.0.0.1", resolve));
  }

  async close(): Promise<void> {
    this.#poll?.abort();
    this.#server.closeAllConnections();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  get root(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  // ── What people do ──────────────────────────────────────────────────────────────────────────────────

  /** A text message; returns its message id. */
  say(text: string, options: MessageOptions = {}): number {
    return this.message({ text }, options);
  }

  /** A message of any content; returns its message id. */
  message(content: Record<string, unknown>, options: MessageOptions = {}): number {
    const message = this.#messageOf(this.#nextMessage++, content, options);
    this.#updates.push({ message });
    return message["message_id"] as number;
  }

  edit(message: number, text: string, options: MessageOptions = {}): void {
    const edited = this.#messageOf(message, { text, edit_date: Math.floor(Date.now() / 1000) }, options);
    this.#updates.push({ edited_message: edited });
  }

  /** Presses the button of a sent message whose label contains `label`; throws when there is none. */
  press(sent: Sent, label: string, from: Person = OWNER): void {
    const button = sent.buttons.flat().find((candidate) => candidate.text.includes(label));
    if (!button) throw new Error(`no button "${label}" under: ${sent.text}`);
    this.pressData(sent, button.callback_data, from);
  }

  pressData(sent: Sent, data: string, from: Person = OWNER): void {
    const message = this.#messageOf(sent.message, { text: sent.text }, { chat: sent.chat });
    const id = String(this.#nextQuery++);
    this.#updates.push({ callback_query: { id, from, message, chat_instance: "1", data } });
  }

  /** A picture in two sizes; `unique` tells pictures apart. `bytes`: what the larger one's file holds. */
  photo(unique: string, options: MessageOptions & { caption?: string; bytes?: Buffer } = {}): number {
    if (options.bytes) this.#state.files.set(`file-${unique}-1280`, options.bytes);
    const size = (width: number) => ({
      file_id: `file-${unique}-${width}`,
      file_unique_id: `${unique}-${width}`,
      width,
      height: width,
    });
    const caption = options.caption === undefined ? {} : { caption: options.caption };
    return this.message({ photo: [size(90), size(1280)], ...caption }, options);
  }

  document(name: string, content: Buffer | string, options: MessageOptions = {}): number {
    const bytes = Buffer.from(content);
    const id = `document-${this.#state.files.size + 1}`;
    this.#state.files.set(id, bytes);
    return this.message(
      { document: { file_id: id, file_unique_id: id, file_name: name, file_size: bytes.length } },
      options,
    );
  }

  /** Any update at all. */
  update(content: Record<string, unknown>): number {
    return this.#updates.push(content);
  }

  #messageOf(id: number, content: Record<string, unknown>, options: MessageOptions): Record<string, unknown> {
    const from = options.from ?? OWNER;
    const chat = options.chat ?? from.id;
    // An edited message keeps the date that it was sent on.
    const sent = this.#dates.get(id) ?? Math.floor(Date.now() / 1000);
    const date = options.date === undefined ? sent : Math.floor(options.date / 1000);
    this.#dates.set(id, date);
    const reply = options.replyTo
      ? { reply_to_message: { message_id: options.replyTo, date, chat: { id: chat } } }
      : {};
    const about = { message_id: id, from: { is_bot: false, ...from }, date };
    const chatType = chat < 0 ? { type: "group", title: "yard" } : { type: "private" };
    return { ...about, chat: { id: chat, ...chatType }, ...reply, ...content, ...options.also };
  }

  // ── What the server does ────────────────────────────────────────────────────────────────────────────

  /** The next calls of a method ("*": of any but getUpdates) fail. */
  fail(method: string, failure: Failure, times = 1): void {
    this.#failures.push({ method, failure, times });
  }

  /** While down, every connection is dropped unanswered; a poll in wait is dropped as well. */
  outage(isDown: boolean): void {
    this.#isDown = isDown;
    if (isDown) {
      this.#poll?.abort();
      this.#server.closeAllConnections();
    }
  }

  redeliver(): void {
    this.#updates.redeliver();
  }

  reorder(compare: (a: Update, b: Update) => number): void {
    this.#updates.reorder(compare);
  }

  expire(): number {
    return this.#updates.expire();
  }

  /** Updates that no poll has confirmed. */
  get waiting(): number {
    return this.#updates.waiting;
  }

  /** Whether a poll waits here for an update. */
  get isPolled(): boolean {
    return this.#poll !== undefined;
  }

  // ── What the bot did ────────────────────────────────────────────────────────────────────────────────

  sent(): Sent[] {
    return [...this.#state.sent];
  }

  /**
   * The next message from the bot that no earlier call returned and that fits; what came before it counts as
   * returned too. Rejects after `milliseconds`.
   */
  async waitForReply(
    match: string | RegExp | ((sent: Sent) => boolean) = () => true,
    milliseconds = WAIT_MS_MAX,
  ): Promise<Sent> {
    const isFit = (sent: Sent) =>
      typeof match === "function"
        ? match(sent)
        : (match instanceof RegExp ? match : new RegExp(match, "i")).test(sent.text);
    return this.waitFor(
      () => {
        const index = this.#state.sent.findIndex((sent) => !this.#taken.has(sent) && isFit(sent));
        if (index === -1) return undefined;
        for (const sent of this.#state.sent.slice(0, index + 1)) this.#taken.add(sent);
        return this.#state.sent[index];
      },
      milliseconds,
      () => `a reply like ${match}; sent: ${JSON.stringify(this.#state.sent.map((sent) => sent.text))}`,
    );
  }

  /** Resolves with the first value that is not undefined; rejects after `milliseconds`. */
  async waitFor<T>(
    look: () => T | undefined,
    milliseconds = WAIT_MS_MAX,
    what: () => string = () => String(look),
  ): Promise<T> {
    const deadline = Date.now() + milliseconds;
    for (;;) {
      const value = look();
      if (value !== undefined) return value;
      if (Date.now() > deadline) throw new Error(`waited in vain for ${what()}`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk as Buffer);
    if (this.#isDown) {
      request.socket.destroy();
      return;
    }
    const [, file] = /^\/file\/bot[^/]+\/(.+)$/.exec(request.url ?? "") ?? [];
    if (file) {
      this.#serveFile(file, response);
      return;
    }
    const [, token, method] = /^\/bot([^/]+)\/(\w+)$/.exec(request.url ?? "") ?? [];
    if (token !== this.token || !method) {
      write(response, { ok: false, error_code: 401, description: "Unauthorized" });
      return;
    }
    const form = readForm(request.headers["content-type"] ?? "", Buffer.concat(chunks));
    await this.#call(method, form, request, response);
  }

  async #call(method: string, form: Form, request: IncomingMessage, response: ServerResponse): Promise<void> {
    this.calls.push({ method, fields: form.fields, at: Date.now() });
    const failure = this.#nextFailure(method);
    if (failure?.kind === "dropped") {
      request.socket.destroy();
      return;
    }
    if (failure?.kind === "hangs") return;
    if (failure?.kind === "status") {
      write(response, statusAnswer(failure));
      return;
    }
    const answer =
      method === "getUpdates" ? await this.#answerPoll(form.fields) : answerCall(method, form, this.#state);
    if (failure?.kind === "lost" || this.#isDown) request.socket.destroy();
    else write(response, answer);
  }

  #nextFailure(method: string): Failure | undefined {
    const isFor = (name: string) => name === method || (name === "*" && method !== "getUpdates");
    const planned = this.#failures.find((candidate) => isFor(candidate.method) && candidate.times > 0);
    if (planned) planned.times--;
    return planned?.failure;
  }

  async #answerPoll(fields: Record<string, unknown>): Promise<Answer> {
    // As on the real server, a further poll ends the one in wait with a conflict.
    this.#poll?.abort();
    const poll = new AbortController();
    this.#poll = poll;
    this.#updates.confirm(Number(fields["offset"] ?? 0));
    const limit = Number(fields["limit"] ?? 100);
    const waitMilliseconds = Number(fields["timeout"] ?? 0) * 1000;
    if (this.#updates.waiting === 0 && waitMilliseconds > 0) {
      await this.#updates.arrival(waitMilliseconds, poll.signal);
    }
    if (poll.signal.aborted) {
      return statusAnswer({
        kind: "status",
        code: 409,
        description: "Conflict: terminated by other getUpdates request",
      });
    }
    this.#poll = undefined;
    return { ok: true, result: this.#updates.take(limit) };
  }

  #serveFile(path: string, response: ServerResponse): void {
    const bytes = this.#state.files.get(decodeURIComponent(path.replace("files/", "")));
    response.writeHead(bytes ? 200 : 404).end(bytes);
  }
}

function statusAnswer(failure: Failure & { kind: "status" }): Answer {
  return {
    ok: false,
    error_code: failure.code,
    description: failure.description ?? `scripted ${failure.code}`,
    ...(failure.retryAfter === undefined ? {} : { parameters: { retry_after: failure.retryAfter } }),
  };
}

function write(response: ServerResponse, answer: Answer): void {
  response.writeHead(answer.ok ? 200 : (answer.error_code ?? 500), { "content-type": "application/json" });
  response.end(JSON.stringify(answer));
}

/** Starts a stand-in on a free port of loopback. */
export async function startStandin({
  token = "100200300:AAstandin_token_of_the_tests_0123456789",
  firstUpdate = 500,
  port = 0,
} = {}): Promise<Standin> {
  const standin = new Standin(token, firstUpdate);
  await standin.open(port);
  return standin;
}
