import { createServer, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** What a bench needs of the Bot API, on loopback: one person, one bot, and the instant of every call. */
export interface BenchServer {
  root: string;
  /** Resolves at the bot's first poll. */
  polled: Promise<number>;
  /** Sends a message; resolves with the milliseconds until the bot's next message arrives. */
  say(text: string): Promise<number>;
  close(): Promise<void>;
}

const PERSON = { id: 1001, is_bot: false, first_name: "Robin" };
const BOT = { id: 100200300, is_bot: true, first_name: "Ledger", username: "bench_bot" };

export async function openBenchServer(): Promise<BenchServer> {
  let nextUpdate = 500;
  let nextMessage = 1;
  const updates: { update_id: number; message: object }[] = [];
  let waiting: { response: ServerResponse; offset: number } | null = null;
  let onPoll: (at: number) => void = () => {};
  let onSent: (at: number) => void = () => {};
  const polled = new Promise<number>((resolve) => {
    onPoll = resolve;
  });

  const answer = (response: ServerResponse, result: unknown) => {
    response.setHeader("content-type", "application/json");
    response.end(JSON.stringify({ ok: true, result }));
  };
  const deliver = () => {
    if (!waiting) return;
    const { response, offset } = waiting;
    while (updates[0] && updates[0].update_id < offset) updates.shift();
    if (updates.length === 0) return;
    waiting = null;
    answer(response, updates);
  };
  const call = (method: string, body: Record<string, unknown>, response: ServerResponse) => {
    switch (method) {
      case "getMe":
        return answer(response, BOT);
      case "getUpdates":
        waiting = { response, offset: Number(body["offset"] ?? 0) };
        onPoll(performance.now());
        return deliver();
      case "sendMessage":
        onSent(performance.now());
        return answer(response, {
          message_id: nextMessage++,
          date: 0,
          chat: { id: PERSON.id, type: "private" },
        });
      default:
        return answer(response, true);
    }
  };
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on("data", (chunk: Buffer) => chunks.push(chunk));
    request.on("end", () => {
      const text = Buffer.concat(chunks).toString();
      const body = text.startsWith("{") ? (JSON.parse(text) as Record<string, unknown>) : {};
      call(request.url?.split("/").at(-1) ?? "", body, response);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    polled,
    say(text) {
      const date = Math.floor(Date.now() / 1000);
      const chat = { id: PERSON.id, type: "private", first_name: PERSON.first_name };
      const message = { message_id: nextMessage++, date, chat, from: PERSON, text };
      updates.push({ update_id: nextUpdate++, message });
      const start = performance.now();
      return new Promise((resolve) => {
        onSent = (at) => resolve(at - start);
        deliver();
      });
    },
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
