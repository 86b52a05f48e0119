/** What stands behind a word on a page of lines such as `Subnet mask: 255.255.255.0`. */
export function row(page: string, word: string): string | undefined {
  const line = page.split('\n').find((one) => one.toLowerCase().startsWith(`${word.toLowerCase()}:`));
  return line?.slice(word.length + 1).trim();
}

export function rows(page: string, word: string): readonly string[] {
  return page
    .split('\n')
    .filter((one) => one.startsWith(`${word}:`))
    .map((one) => one.slice(word.length + 1).trim());
}

/** Dotted numbers as one number; undefined for anything else. */
export function numberOf(dotted: string | undefined): number | undefined {
  const parts = (dotted ?? '').split('.').map(Number);
  if (parts.length !== 4 || !parts.every((part) => Number.isInteger(part) && part >= 0 && part < 256))
    return undefined;
  return parts.reduce((sum, part) => sum * 256 + part, 0);
}

export function maskOf(prefix: number): string {
  const bits = prefix === 0 ? 0 : (0xffffffff << (32 - prefix)) >>> 0;
  return [24, 16, 8, 0].map((shift) => (bits >>> shift) & 255).join('.');
}
