import type { Instant } from "../../core/calendar.ts";

/** A message as a transport hands it in. Ids are the transport's own, as text. */
export interface Incoming {
  /** Member id (table members). */
  person: number;
  chat: string;
  message: string;
  text: string;
  /** When the person sent it, not when it was read: it decides the day. */
  said: Instant;
  /** When this wording of an edited message was made, where the transport tells; one made before counts no more. */
  revised?: Instant;
  /** The message that this one answers, if any. */
  replyTo?: string;
  /** The person changed an earlier message: same `message` id, new text. */
  edited?: true;
  /** A picture that came with it, already known to the transport. */
  picture?: { file: string; unique: string };
  /** It belongs to the album of the message that it answers. */
  follows?: true;
  /** A text file that came with it: its content is the text. */
  document?: { name: string };
  /** What marks this delivery as handled; the same one again changes nothing. */
  update?: string;
}

/** A pressed button. */
export interface Press {
  person: number;
  chat: string;
  /** The bot's message that the button stands under. */
  message: string;
  press: string;
  said: Instant;
  update?: string;
}

/** `leavesLong`: what takes long, such as recording a file of past pieces, is only stored, and left for `goOn`. */
interface How {
  leavesLong: boolean;
}

/** The conversation: each call is one transaction, and its replies are in the outbox when it returns. */
export interface Conversation {
  hear(incoming: Incoming, how?: How): void;
  press(press: Press, how?: How): void;
  /** The same as `hear` for a message of many lines: stored first, then handled in slices that let others go first. */
  hearLong(incoming: Incoming, isStopping: () => boolean): Promise<void>;
  /** Goes on, in slices, with what was left or what an earlier process left half handled. */
  goOn(isStopping: () => boolean): Promise<void>;
}
