const TAB_STOP = 8;
const FULL_WIDTH_OFFSET = 0xfee0;

const ESCAPE = String.fromCharCode(27);
const COLOURS = new RegExp(`${ESCAPE}\\[[0-9;?]{0,20}[A-Za-z]`, 'g');
/** Control, bidi and zero-width characters, soft hyphens, BOMs inside: they never belong to what was printed. */
const UNSEEN = /(?![\t\v\f])[\p{C}\p{Default_Ignorable_Code_Point}]/gu;
const BLANKS = /[\v\f\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g;
const NEEDS_NOTHING = /^[ -~]*$/;
const NOT_ASCII = /[\u0080-\uffff]/;

/**
 * A line with what mail programs, web pages and word processors put in taken out again: unseen characters and colours
 * gone, every blank a plain one, straight quotes, hyphens and dots, full-width signs narrowed, tabs as blanks up to
 * the next stop.
 */
export function plainCharacters(line: string): string {
  if (NEEDS_NOTHING.test(line)) return line;
  const seen = line.replace(COLOURS, '').replace(UNSEEN, '').replace(BLANKS, ' ');
  return withoutTabs(NOT_ASCII.test(seen) ? plainSigns(seen) : seen);
}

function plainSigns(line: string): string {
  return line
    .normalize('NFC')
    .replace(/[\uff01-\uff5e]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - FULL_WIDTH_OFFSET))
    .replace(/(?<=\d)[\u3002\uff61](?=\d)/g, '.')
    .replace(/[\u2018-\u201b\u2032]/g, "'")
    .replace(/[\u201c-\u201f\u2033]/g, '"')
    .replace(/[\u2010-\u2012\u2212]/g, '-')
    .replace(/(?<=[0-9A-Fa-f]{2})[\u2013\u2014](?=[0-9A-Fa-f]{2})/g, '-')
    .replace(/\u2026/g, '...');
}

/** Tables and indentation keep their columns. */
function withoutTabs(line: string): string {
  const [first = '', ...others] = line.split('\t');
  const pieces = [first];
  let column = first.length;
  for (const piece of others) {
    const blanks = TAB_STOP - (column % TAB_STOP);
    pieces.push(' '.repeat(blanks), piece);
    column += blanks + piece.length;
  }
  return pieces.join('');
}
