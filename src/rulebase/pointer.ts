/** A JSON pointer from its parts, with `~` and `/` escaped (RFC 6901 section 3). */
export function pointer(...parts: readonly (string | number)[]): string {
  return parts.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
