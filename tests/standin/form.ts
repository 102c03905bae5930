/** The fields of a request to the Bot API: JSON, or a multipart form with its files. */
export interface Form {
  fields: Record<string, unknown>;
  files: { name: string; bytes: Buffer }[];
}

export function readForm(contentType: string, body: Buffer): Form {
  const boundary = /boundary=(.+)$/.exec(contentType)?.[1];
  if (boundary) return readMultipart(`--${boundary}`, body);
  const text = body.toString("utf8");
  return { fields: text === "" ? {} : (JSON.parse(text) as Record<string, unknown>), files: [] };
}

function readMultipart(separator: string, body: Buffer): Form {
  const form: Form = { fields: {}, files: [] };
  let start = body.indexOf(separator);
  while (start !== -1) {
    const next = body.indexOf(separator, start + separator.length);
    if (next === -1) break;
    // Between two separators: a line end, the part's head, an empty line, the content, a line end.
    readPart(body.subarray(start + separator.length + 2, next - 2), form);
    start = next;
  }
  return form;
}

function readPart(part: Buffer, form: Form): void {
  const headEnd = part.indexOf("\r\n\r\n");
  const head = part.subarray(0, headEnd).toString("utf8");
  const content = part.subarray(headEnd + 4);
  const fileName = /filename="?([^"\r\n;]+)"?/i.exec(head)?.[1];
  if (fileName) {
    form.files.push({ name: fileName, bytes: Buffer.from(content) });
    return;
  }
  const name = /[; ]name="([^"]+)"/i.exec(head)?.[1];
  if (name) form.fields[name] = parsedWhereJson(content.toString("utf8"));
}

function parsedWhereJson(text: string): unknown {
  if (!/^[[{]/.test(text)) return text;
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
