import { CLASSES } from "./words/classes.ts";

/**
 * A way of asking, the plainer one that it is put into, and a question with what it becomes, which is the row's test.
 *
 * In the pattern a word is `a|b`, `two_words` stand together, `<name>` is one of a class, `?` behind it may be missing;
 * `x:2` is any words, two at most, `x:<number>` and `x:a|b` are those, and `$x` in the plainer one says them again.
 * `{a|b}` may stand any number of times. `,` may be a mark there, `,,` must be, `?` is the mark of a question; `^` and `$`
 * are the beginning and the end. `=a|b` comes next and `!a|b` does not, `~a|b` did not go before; none of them is taken.
 */
export type WayRow = readonly [pattern: string, plainer: string, asked: string, becomes: string];

/** The rows of a table as it is written: the question that shows a row and what it becomes, then the pattern and the plainer way. */
export const waysOf = (written: Readonly<Record<`${string} =>${string}`, string>>): readonly WayRow[] =>
  Object.entries(written).map(([shown, put]): WayRow => [...bothSides(put), ...bothSides(shown)]);

const bothSides = (text: string): [string, string] => {
  const at = text.indexOf(" =>");
  return [text.slice(0, at), text.slice(at + 4)];
};

const END = "[.?! ]*$";
const MARK = "[,.;:?!]+|,? -+(?= )";
const ANY_WORD = "[\\w#$%&/+'.-]*[\\w#$%&/+'-]";

/** The alternatives of a word, classes by their words, as a pattern without the blank before it. */
function wordOf(said: string): string {
  const words = said
    .split("|")
    .map((each) => {
      const name = /^<(\w+)>$/.exec(each)?.[1];
      if (name === undefined) return each.replaceAll("_", " ").replaceAll("*", "\\w*");
      const named = CLASSES[name];
      if (named === undefined) throw new Error(`No class of words is called ${name}`);
      return named;
    })
    .join("|");
  return `(?:${words})(?![\\w'])`;
}

function tokenOf(token: string): string {
  const isOptional = token.length > 1 && token.endsWith("?");
  const bare = isOptional ? token.slice(0, -1) : token;
  if (bare === "^") return "^";
  if (bare === "$") return END;
  if (bare === ",") return `(?:${MARK})?`;
  if (bare === ",,") return `(?:${MARK})`;
  if (token === "?") return "\\?+ ?$";
  if (bare.startsWith("=")) return `(?= ${wordOf(bare.slice(1))})`;
  if (bare.startsWith("!")) return `(?! ${wordOf(bare.slice(1))})`;
  if (bare.startsWith("~")) return `(?<! ${wordOf(bare.slice(1))})`;
  if (bare.startsWith("{")) return `(?: ${wordOf(bare.slice(1, -1))})*`;
  const [, name, of] = /^([a-z]):(.+)$/.exec(bare) ?? [];
  const most = of !== undefined && /^\d+$/.test(of) ? Number(of) : null;
  const words = most ? ` ${ANY_WORD}(?:[,.;:?!]* ${ANY_WORD}){0,${most - 1}}?` : ` ${wordOf(of ?? bare)}`;
  const whole = name === undefined ? words : `(?<${name}>${words})`;
  return isOptional ? `(?:${whole})?` : whole;
}

/** A row ready to be used: the words of which a question must hold one, what the row finds, and what it puts there. */
export interface Way {
  /** Null where it may hold any. */
  needs: readonly string[] | null;
  /** Made at the first question that holds a word of it: of some two hundred most wait for theirs in vain. */
  from: () => RegExp;
  put: (groups: Readonly<Record<string, string | undefined>>) => string;
}

export function wayOf([pattern, plainer]: WayRow): Way {
  let made: RegExp | undefined;
  const from = () => {
    made ??= new RegExp(pattern.split(" ").map(tokenOf).join(""));
    return made;
  };
  const put: Way["put"] = (groups) =>
    plainer
      .replace(/\$([a-z])/g, (_, name: string) => (groups[name] ?? "").trim())
      .replace(/ +/g, " ")
      .trim();
  return { needs: neededWords(pattern), from, put };
}

const PLAIN_WORDS = /^[a-z0-9'_|]+$/;

/** The first words of what stands in the pattern once and cannot be missing, where those are words and no classes. */
function neededWords(pattern: string): readonly string[] | null {
  const bare = pattern.split(" ").map((token) => /^(?:[a-z]:)?(.+)$/.exec(token)![1]!);
  const least = bare
    .filter((token) => PLAIN_WORDS.test(token) && !/^\d+$/.test(token))
    .map((token) => token.split("|").map((word) => word.split("_", 1)[0]!))
    .sort((a, b) => a.length - b.length)[0];
  return least ?? null;
}

/** Some words, in lower case and without apostrophes, in the plainer way; as they are where the row does not find them. */
export function plainerBy({ needs, from, put }: Way, said: string): string {
  if (needs && !needs.some((word) => said.includes(word))) return said;
  const padded = ` ${said.trim()}`;
  const match = from().exec(padded);
  if (!match) return said;
  const before = padded.slice(0, match.index);
  const behind = padded.slice(match.index + match[0].length);
  const plain = put(match.groups ?? {});
  return `${before}${plain === "" ? "" : ` ${plain}`}${behind}`.trim();
}
