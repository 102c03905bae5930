import type { Api } from "grammy";
import type { Document } from "grammy/types";
import { failureText, type Log } from "../log.ts";

/** A pasted history of years stays far below this; anything larger is no note. */
const DOCUMENT_BYTES_MAX = 1_000_000;
const DOCUMENT_LINES_MAX = 2000;
const FETCH_SECONDS_MAX = 20;

type Fetched =
  | { kind: "text"; name: string; text: string }
  /** Not a text or table, or too large: the bot cannot read it. */
  | { kind: "unreadable"; why: "not text" | "too long" | "too many lines" }
  | { kind: "failed" };

/** Fetches a text file or a table of comma-separated values from Telegram, at most `DOCUMENT_BYTES_MAX` of it. */
export async function fetchDocument(
  document: Document,
  deps: { api: Api; fileRoot: string; log: Log; signal: AbortSignal },
): Promise<Fetched> {
  const name = document.file_name ?? "";
  if (!/\.(?:txt|csv)$/i.test(name)) return { kind: "unreadable", why: "not text" };
  if ((document.file_size ?? 0) > DOCUMENT_BYTES_MAX) return { kind: "unreadable", why: "too long" };
  const signal = AbortSignal.any([deps.signal, AbortSignal.timeout(FETCH_SECONDS_MAX * 1000)]);
  try {
    const file = await deps.api.getFile(document.file_id, signal as never);
    const response = await fetch(`${deps.fileRoot}/${file.file_path ?? ""}`, { signal });
    if (!response.ok || !response.body) throw new Error(`the file server answered ${response.status}`);
    const bytes = await readUpTo(response.body, DOCUMENT_BYTES_MAX);
    if (!bytes) return { kind: "unreadable", why: "too long" };
    const text = textOf(bytes);
    const lines = text.split(/\r\n|\r|\n/).length;
    if (lines > DOCUMENT_LINES_MAX + 1) return { kind: "unreadable", why: "too many lines" };
    return { kind: "text", name, text };
  } catch (error) {
    deps.log.warn("document not fetched", { why: failureText(error) });
    return { kind: "failed" };
  }
}

/** The whole stream, or null where it is longer than that. */
async function readUpTo(stream: AsyncIterable<Uint8Array>, bytesMax: number): Promise<Buffer | null> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of stream) {
    length += chunk.length;
    if (length > bytesMax) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** Spreadsheet programs write UTF-8 or, with a mark at the start, UTF-16. */
function textOf(bytes: Buffer): string {
  const isWide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(isWide ? "utf-16le" : "utf-8").decode(bytes);
}
