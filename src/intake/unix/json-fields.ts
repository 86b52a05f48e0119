import type { Json } from './json.js';

/** The value of a key, where the value is an object that has it. */
export function field(json: Json | undefined, key: string): Json | undefined {
  return json?.kind === 'object' ? json.entries.get(key) : undefined;
}

/** The text of a key. */
export function textField(json: Json | undefined, key: string): string | undefined {
  const value = field(json, key);
  return value?.kind === 'plain' && typeof value.value === 'string' ? value.value : undefined;
}

/** The number of a key. */
export function numberField(json: Json | undefined, key: string): number | undefined {
  const value = field(json, key);
  return value?.kind === 'plain' && typeof value.value === 'number' ? value.value : undefined;
}

/** The members of a list under a key; none where there is no list. */
export function listField(json: Json | undefined, key: string): readonly Json[] {
  const value = field(json, key);
  return value?.kind === 'list' ? value.items : [];
}

/** The members of a list of words under a key. */
export function wordsField(json: Json | undefined, key: string): readonly string[] {
  return listField(json, key).flatMap((it) =>
    it.kind === 'plain' && typeof it.value === 'string' ? [it.value] : [],
  );
}
