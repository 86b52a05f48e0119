const LONGEST = 40;

/** The name in a piece of a line, without the signs around it; empty where it is too long to be one. */
export function nameIn(piece: string): string {
  const bare = piece.replace(/^[^\p{L}\p{N}(]{1,40}/u, '').replace(/[^\p{L}\p{N})]{1,40}$/u, '');
  const name = bare.includes('(') ? bare : bare.replace(/\)$/, '');
  return name.length > LONGEST ? '' : name;
}
