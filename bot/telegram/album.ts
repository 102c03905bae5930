import type { Message } from "grammy/types";

const ALBUMS_MAX = 100;

/**
 * Telegram sends an album as one message for each picture, with the words, if any, under one only. The others
 * count as replies to that one, else to the first, so that all of them reach the same piece.
 */
export class Albums {
  readonly #first = new Map<string, number>();

  /** The message of the album that this one joins; undefined where it is no follower. */
  leader(message: Message): number | undefined {
    const album = message.media_group_id;
    if (!album) return undefined;
    const first = this.#first.get(album);
    if (first !== undefined && !message.caption) return first;
    this.#first.set(album, message.message_id);
    const [oldest] = this.#first.keys();
    if (this.#first.size > ALBUMS_MAX && oldest !== undefined) this.#first.delete(oldest);
    return undefined;
  }
}
