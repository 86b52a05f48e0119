/** Control, direction and invisible characters, and halves of characters: they steer a terminal and say nothing. */
const UNFIT = /(?![\n\t])[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Default_Ignorable_Code_Point}]/gu;

/** Text without control characters; line ends and tabs stay. */
export function withoutControls(text: string): string {
  return text.replace(UNFIT, '');
}

const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
};

const REFERENCE = /&(?:#(\d{1,7})|#[xX]([\da-fA-F]{1,6})|([a-z]+));/g;

/** Resolves references such as `&amp;` and `&#215;` (CommonMark 0.31.2, section 2.5), of the named ones the six usual. */
export function resolved(text: string): string {
  const plain = text.replace(REFERENCE, (whole, decimal?: string, hex?: string, name?: string) => {
    if (name !== undefined) return (Object.hasOwn(NAMED, name) ? NAMED[name] : undefined) ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex ?? '0', 16) : Number(decimal);
    return code === 0 || code > 0x10ffff ? '\ufffd' : String.fromCodePoint(code);
  });
  return withoutControls(plain);
}
