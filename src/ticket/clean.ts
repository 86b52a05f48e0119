/** Terminal sequences (ECMA-48, sections 5.3, 5.4 and 5.6): taken out whole, so that no `[31m` is left behind. */
const SEQUENCES =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
  /(?:\u001b\[|\u009b)[0-?]{0,64}[ -/]{0,8}[@-~]|(?:\u001b[\]PX^_]|[\u0090\u0098\u009d-\u009f])[^\u0007\u001b\u0090\u0098\u009c-\u009f]*(?:\u0007|\u001b\\|\u009c)|\u001b[ -/]{0,8}[0-~]/g;
/** Control, direction, zero-width and unassigned characters, and halves of a character. */
const UNSEEN = /[\p{C}\p{Default_Ignorable_Code_Point}]/gu;

/** Text on one line, without terminal sequences and unseen characters; every run of white space is one space. */
export function clean(text: string): string {
  return text
    .replace(SEQUENCES, '')
    .replace(/[^\S\ufeff]+|\u0085/g, ' ')
    .replace(UNSEEN, '')
    .replace(/ {2,}/g, ' ')
    .trim();
}
