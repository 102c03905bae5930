import type { Api } from "grammy";
import { send } from "./http.ts";

export interface FetchDeps {
  api: Api;
  /** Where the chat server hands out files, the token in it. */
  fileRoot: string;
  signal: AbortSignal;
}

const FETCH_SECONDS_MAX = 20;

/** The bytes of a file that somebody sent; null where it is longer than that. Rejects where it cannot be had. */
export async function fetchFile(file: string, bytesMax: number, deps: FetchDeps): Promise<Buffer | null> {
  const signal = AbortSignal.any([deps.signal, AbortSignal.timeout(FETCH_SECONDS_MAX * 1000)]);
  const { file_path: path = "" } = await deps.api.getFile(file, signal as never);
  const response = await send(`${deps.fileRoot}/${path}`, { signal });
  if (response.statusCode === 200) return readUpTo(response, bytesMax);
  response.destroy();
  throw new Error(`the file server answered ${response.statusCode}`);
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
