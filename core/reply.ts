/** A press of a button comes back as `press`: at most 60 bytes of ASCII (a chat platform's limit is 64). */
export interface Button {
  label: string;
  press: string;
}

/** What the bot says, without a chat's own markup: plain text, lines parted by "\n"; rows of buttons. */
export interface Reply {
  text: string;
  buttons?: Button[][];
}
