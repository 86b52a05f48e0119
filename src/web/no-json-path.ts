/** Stands in the page for what json-rules-engine resolves a `path` with; the schema forbids `path`. */
export function JSONPath(): never {
  throw new Error('no condition of the rule base has a path');
}
