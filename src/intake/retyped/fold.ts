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
  return Array.from({ length: text.length }, (_, at) => plain(text.charAt(at))).join('');
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
