import http, { type IncomingMessage } from "node:http";
import https from "node:https";
import { pipeline, type Readable } from "node:stream";

/** A connection without use for so long may have died unnoticed behind a router: the next call makes a new one. */
const IDLE_MS_MAX = 4000;

interface Call {
  method?: string;
  headers?: Record<string, string>;
  body?: string | Readable;
  signal?: AbortSignal;
}

const kept = { keepAlive: true, timeout: IDLE_MS_MAX };
const agents = { http: new http.Agent(kept), https: new https.Agent(kept) };

/** Makes one call over connections that are kept; resolves once the head of the answer is there. */
export function send(
  url: string,
  { method = "GET", headers = {}, body, signal }: Call,
): Promise<IncomingMessage> {
  return new Promise((resolve, reject) => {
    const isSecure = url.startsWith("https:");
    const options = {
      method,
      headers,
      agent: isSecure ? agents.https : agents.http,
      ...(signal ? { signal } : {}),
    };
    const request = (isSecure ? https.request : http.request)(url, options);
    request.on("response", resolve);
    request.on("error", reject);
    if (body === undefined || typeof body === "string") request.end(body);
    else pipeline(body, request, (error) => error && reject(error));
  });
}

/**
 * All that grammY asks of a fetch, on Node's own client: the platform's fetch costs a note another millisecond and
 * ten megabytes.
 */
export async function fetchForGrammy(url: string, call: Call): Promise<{ json(): Promise<unknown> }> {
  // Whether the connection is kept is for the agent to say.
  const { connection: _, ...headers } = call.headers ?? {};
  const response = await send(url, { ...call, headers });
  return { json: async () => JSON.parse(await textOf(response)) };
}

function textOf(response: IncomingMessage): Promise<string> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    response.on("data", (chunk: Buffer) => chunks.push(chunk));
    response.on("end", () => resolve(Buffer.concat(chunks).toString()));
    response.on("error", reject);
  });
}
