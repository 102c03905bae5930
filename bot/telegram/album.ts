import type { Message } from "grammy/types";

const ALBUMS_MAX = 100;

/**
 * Telegram sends an album as one message for each picture, with the words under the first only. The others
 * count as replies to it, so that all of them reach the same piece.
 */
export class Albums {
  readonly #first = new Map<string, number>();

  /** The message that this one joins: the album's first with words; undefined where it is no follower. */
  leader(message: Message): number | undefined {
    const album = message.media_group_id;
    if (!album) return undefined;
    if (message.caption) {
      this.#first.set(album, message.message_id);
      const [oldest] = this.#first.keys();
      if (this.#first.size > ALBUMS_MAX && oldest !== undefined) this.#first.delete(oldest);
      return undefined;
    }
    return this.#first.get(album);
  }
}
