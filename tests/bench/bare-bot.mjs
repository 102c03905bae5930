import { join } from "node:path";
import Database from "better-sqlite3";
import { Bot } from "grammy";

// The least that a bot on this stack can be: each note is answered after one durable commit of it and its answer.
const { BOT_TOKEN, TELEGRAM_API_ROOT, DATA_DIR } = process.env;
const database = new Database(join(DATA_DIR, "bare.sqlite"));
database.pragma("journal_mode = WAL");
database.pragma("synchronous = FULL");
database.exec("create table notes (id integer primary key, text text not null, answer text not null)");
const insert = database.prepare("insert into notes (text, answer) values (?, ?)");
const bot = new Bot(BOT_TOKEN, { client: { apiRoot: TELEGRAM_API_ROOT } });
bot.on("message:text", (context) => {
  const answer = `Noted: ${context.message.text}`;
  insert.run(context.message.text, answer);
  return context.reply(answer);
});
await bot.start();
