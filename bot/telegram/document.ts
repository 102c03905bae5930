import type { Document } from "grammy/types";
import { failureText, type Log } from "../log.ts";
import { type FetchDeps, fetchFile } from "./fetched.ts";

/** A pasted history of years stays far below this; anything larger is no note. */
const DOCUMENT_BYTES_MAX = 1_000_000;
const DOCUMENT_LINES_MAX = 2000;

type Fetched =
  | { kind: "text"; name: string; text: string }
  /** Not a text or table, or too large: the bot cannot read it. */
  | { kind: "unreadable"; why: "not text" | "too long" | "too many lines" }
  | { kind: "failed" };

/** Fetches a text file or a table of comma-separated values from Telegram, at most `DOCUMENT_BYTES_MAX` of it. */
export async function fetchDocument(document: Document, deps: FetchDeps & { log: Log }): Promise<Fetched> {
  const name = document.file_name ?? "";
  if (!/\.(?:txt|csv)$/i.test(name)) return { kind: "unreadable", why: "not text" };
  if ((document.file_size ?? 0) > DOCUMENT_BYTES_MAX) return { kind: "unreadable", why: "too long" };
  try {
    const bytes = await fetchFile(document.file_id, DOCUMENT_BYTES_MAX, deps);
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

/** Spreadsheet programs write UTF-8 or, with a mark at the start, UTF-16. */
function textOf(bytes: Buffer): string {
  const isWide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(isWide ? "utf-16le" : "utf-8").decode(bytes);
}
