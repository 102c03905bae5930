import { createInterface } from "node:readline";

/** Questions and answers on the terminal, or with the lines of a script. */
export interface Dialogue {
  say(...lines: string[]): void;
  /** The answer without spaces around it. Rejects with `InputEnded` where no further line comes. */
  ask(question: string): Promise<string>;
  close(): void;
}

/** The input ended, or was broken off, before every question had its answer. */
export class InputEnded extends Error {}

export function openDialogue(): Dialogue {
  const { stdin, stdout } = process;
  const isChat = stdin.isTTY === true && stdout.isTTY === true;
  const reader = createInterface({ input: stdin, output: isChat ? stdout : undefined, prompt: "> " });
  // An iterator keeps lines that come before they are asked for, as from a script.
  const lines = reader[Symbol.asyncIterator]();
  reader.on("SIGINT", () => reader.close());
  return {
    say: (...words) => void stdout.write(`${words.join("\n")}\n`),
    async ask(question) {
      stdout.write(`\n${question}\n`);
      reader.setPrompt("> ");
      if (isChat) reader.prompt();
      const { done, value } = await lines.next();
      if (done) throw new InputEnded();
      return value.trim();
    },
    close: () => reader.close(),
  };
}
