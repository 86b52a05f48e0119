/** Consoles that write through two layers end their lines with two CRs and a LF: still one end. */
const LINE_END = /\r{0,2}\n|[\r\u2028\u2029]/;

/** The lines of a text: CRLF, LF, lone CR, LS and PS end one. */
export function splitLines(text: string): readonly string[] {
  return text.split(LINE_END);
}
