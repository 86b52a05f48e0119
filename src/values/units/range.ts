/** What is known of a value: it lies between these two, both allowed. Equal where it is known exactly. */
export interface Range<T extends number> {
  readonly least: T;
  readonly most: T;
}

export function exactly<T extends number>(value: T): Range<T> {
  return { least: value, most: value };
}

/** The range between two values, whichever of them comes first. */
export function between<T extends number>(one: T, other: T): Range<T> {
  return one <= other ? { least: one, most: other } : { least: other, most: one };
}
