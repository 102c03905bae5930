/** What is piped into a tool, line by line as it comes; a last line without a line break counts too. */
export async function* typedLines(input: NodeJS.ReadStream = process.stdin): AsyncGenerator<string> {
  let rest = "";
  input.setEncoding("utf8");
  for await (const chunk of input) {
    const lines = (rest + chunk).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) yield withoutReturn(line);
  }
  if (rest !== "") yield withoutReturn(rest);
}

/** Some systems end a line with two characters. */
function withoutReturn(line: string): string {
  return line.endsWith("\r") ? line.slice(0, -1) : line;
}
