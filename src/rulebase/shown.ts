const LONGEST = 40;

/** A value of a file, short enough for one line of a message and without characters that upset a terminal. */
export function shown(value: unknown): string {
  const text = (JSON.stringify(value) ?? '').replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, '');
  const letters = [...text.slice(0, 4 * LONGEST)];
  return letters.length > LONGEST ? `${letters.slice(0, LONGEST).join('')}...` : letters.join('');
}
