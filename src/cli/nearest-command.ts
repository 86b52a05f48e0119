/** The known command that shares most letters at its beginning with what was typed; the first where none does. */
export function nearestCommand(typed: string, known: readonly string[]): string {
  const shared = (word: string): number => {
    let length = 0;
    while (length < word.length && word[length] === typed[length]) length++;
    return length;
  };
  return known.reduce((best, word) => (shared(word) > shared(best) ? word : best), known[0] ?? '');
}
