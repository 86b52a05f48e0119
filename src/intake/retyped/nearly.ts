const LEAST = 6;

/** Whether two words differ by one letter that is wrong, missing or too many, or by two that are swapped. */
export function isNearly(word: string, meant: string): boolean {
  if (word.length < LEAST - 1 || meant.length < LEAST || Math.abs(word.length - meant.length) > 1)
    return false;
  let at = 0;
  while (at < word.length && word[at] === meant[at]) at += 1;
  const [rest, wanted] = [word.slice(at), meant.slice(at)];
  if (rest.slice(1) === wanted.slice(1) || rest === wanted.slice(1) || rest.slice(1) === wanted) return true;
  return rest[0] === wanted[1] && rest[1] === wanted[0] && rest.slice(2) === wanted.slice(2);
}
