/** One line of a file of JSON lines. */
export interface JsonLine {
  /** What it says, or undefined where it is not JSON in UTF-8. */
  readonly value: unknown;
  /** Does a newline end it? */
  readonly ended: boolean;
  /** Bytes of the file up to and with this line. */
  readonly end: number;
}

const NEWLINE = 0x0a;
const UTF8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** The lines of a file of JSON lines. Split as bytes, because a cut may fall inside a character. */
export function* jsonLines(bytes: Uint8Array): Generator<JsonLine, undefined> {
  for (let start = 0; start < bytes.length; ) {
    const newline = bytes.indexOf(NEWLINE, start);
    const end = newline === -1 ? bytes.length : newline + 1;
    yield { value: parse(bytes.subarray(start, end)), ended: newline !== -1, end };
    start = end;
  }
}

function parse(line: Uint8Array): unknown {
  try {
    return JSON.parse(UTF8.decode(line));
  } catch {
    return undefined;
  }
}
