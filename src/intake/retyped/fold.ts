const ASCII = /^[ -~]*$/;
/** Letters that have a stroke or no dot instead of an accent. */
const PLAIN: ReadonlyMap<string, string> = new Map([
  ['ı', 'i'],
  ['ł', 'l'],
  ['ø', 'o'],
  ['đ', 'd'],
]);

/** Small letters without accents. Of the same length, so that a place in it is a place in the original. */
export function folded(text: string): string {
  if (ASCII.test(text)) return text.toLowerCase();
  const pieces: string[] = [];
  for (let from = 0; from < text.length; from += MOST_AT_ONCE) {
    const codes = new Uint16Array(Math.min(MOST_AT_ONCE, text.length - from));
    for (let at = 0; at < codes.length; at++) codes[at] = plainCode(text.charCodeAt(from + at));
    pieces.push(String.fromCharCode(...codes));
  }
  return pieces.join('');
}

/** Nought is itself, and stands for a character that was not asked for yet. */
const CODES = new Uint16Array(0x10000);
const MOST_AT_ONCE = 4096;

function plainCode(code: number): number {
  const known = CODES[code] ?? 0;
  if (known !== 0 || code === 0) return known;
  const found = plain(String.fromCharCode(code)).charCodeAt(0);
  CODES[code] = found;
  return found;
}

/** As `folded`, with hyphens and the like as blanks, as the phrases of the tables are looked up. */
export function spaced(foldedText: string): string {
  return foldedText.replace(/[-_/']/g, ' ');
}

function plain(character: string): string {
  if (character < '\u0080') return character.toLowerCase();
  const small = character.normalize('NFD').charAt(0).toLowerCase().charAt(0);
  return PLAIN.get(small) ?? small;
}
