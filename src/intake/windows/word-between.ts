/** What stands before a word, and what must stand behind it where the verb comes last; small letters. */
export type Phrase = readonly [before: string, behind: string];

const WORD = /^["']?([^\s"'。]{1,255})/;

/** Of the same length as the text, so that places in one are places in the other. */
export function smallLetters(text: string): string {
  return text.replaceAll('İ', 'i').toLowerCase();
}

/** The word that the first fitting phrase has in it, without a full stop at its end. */
export function wordBetween(text: string, phrases: readonly Phrase[]): string | undefined {
  const small = smallLetters(text);
  for (const [before, behind] of phrases) {
    const at = small.indexOf(before);
    if (at < 0) continue;
    const word = WORD.exec(text.slice(at + before.length))?.[1];
    if (word !== undefined && small.includes(behind, at + before.length)) return word.replace(/[.:,]$/, '');
  }
  return undefined;
}
