import { ask } from "./ask.ts";
import { buy } from "./buy.ts";
import { collect } from "./collect.ts";
import { drive } from "./drive.ts";
import { fallthrough } from "./fallthrough.ts";
import { finish } from "./finish.ts";
import { fix } from "./fix.ts";
import { goal } from "./goal.ts";
import { hold } from "./hold.ts";
import { income } from "./income.ts";
import { lent } from "./lent.ts";
import { list } from "./listing.ts";
import { loan } from "./loan.ts";
import { mend } from "./mend.ts";
import { nudge } from "./nudge.ts";
import { pay } from "./pay.ts";
import { refund } from "./refund.ts";
import { repeat } from "./repeat.ts";
import { reprice } from "./reprice.ts";
import { retire } from "./retire.ts";
import { sell } from "./sell.ts";
import { share } from "./share.ts";
import { spend } from "./spend.ts";
import { start } from "./start.ts";
import { statement } from "./statement.ts";
import { taxrate } from "./taxrate.ts";
import { terms } from "./terms.ts";
import { trade } from "./trade.ts";
import { undo } from "./undo.ts";
import { work } from "./work.ts";

/** Every kind of note, in the order of the help. A new kind is its own file and its line here. */
export const verbs = [
  buy,
  spend,
  work,
  start,
  finish,
  list,
  reprice,
  hold,
  fallthrough,
  sell,
  collect,
  trade,
  share,
  refund,
  retire,
  income,
  repeat,
  pay,
  loan,
  terms,
  statement,
  drive,
  lent,
  undo,
  fix,
  mend,
  goal,
  taxrate,
  nudge,
  ask,
] as const;
