/** What stands in plain data under these names, one in the other; `undefined` where one is missing. */
export function within(data: unknown, ...names: readonly (string | number)[]): unknown {
  let now = data;
  for (const name of names) {
    if (typeof now !== 'object' || now === null || !Object.hasOwn(now, name)) return undefined;
    now = (now as Readonly<Record<string | number, unknown>>)[name];
  }
  return now;
}

/** The number there. */
export function numberWithin(data: unknown, ...names: readonly (string | number)[]): number | undefined {
  const found = within(data, ...names);
  return typeof found === 'number' && Number.isFinite(found) ? found : undefined;
}

/** The text there. */
export function textWithin(data: unknown, ...names: readonly (string | number)[]): string | undefined {
  const found = within(data, ...names);
  return typeof found === 'string' ? found : undefined;
}
