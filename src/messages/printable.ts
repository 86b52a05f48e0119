/**
 * A name from outside, fit for a sentence on a terminal: control and direction characters become `?`,
 * and what is longer than `longest` characters is cut with an ellipsis.
 */
export function printable(text: string, longest = 300): string {
  const plain = [...text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, '?')];
  return plain.length <= longest ? plain.join('') : `${plain.slice(0, longest - 1).join('')}…`;
}
