import { Validator } from 'ip-num';
import type { MessageId, Sentence } from '../messages/say.js';
import { ok, problem, type Result } from './result.js';
import { quoted } from './tidy.js';

/** The four numbers of a dotted address or mask, each 0 to 255. */
export type Octets = readonly [number, number, number, number];

/** What the four numbers are meant to be; the sentences differ. */
export type Shape = 'address' | 'mask';

const WORDS = {
  address: { letters: 'typed.address-letters', few: 'typed.address-few', many: 'typed.address-many' },
  mask: { letters: 'typed.mask-letters', few: 'typed.mask-few', many: 'typed.mask-many' },
} as const satisfies Record<Shape, Record<string, MessageId>>;

const DIGIT_LIKE: ReadonlyMap<string, string> = new Map([
  ['o', '0'],
  ['O', '0'],
  ['l', '1'],
  ['I', '1'],
]);

/** Tidied text without quotes around it and without dots, commas or slashes after it. */
export function withoutFrills(text: string): string {
  return text.replace(/^["'“”‘’«»` ]+/, '').replace(/["'“”‘’«»`.,;/ ]+$/, '');
}

/**
 * Four numbers with dots, commas or spaces between them. Refuses an octet over 255 and a leading
 * nought, which some programs read as octal (RFC 6943, section 3.1.1).
 */
export function fourNumbers(text: string, shape: Shape): Result<Octets> {
  const foreign = foreignCharacter(text, shape);
  if (foreign !== undefined) return problem(foreign);
  const pieces = /[.,]/.test(text) ? text.replace(/ ?([.,]) ?/g, '$1').split(/[.,]/) : text.split(' ');
  const whole = { text: quoted(text), count: pieces.length };
  if (pieces.includes('')) return problem({ id: 'typed.gap', with: { text: whole.text } });
  if (pieces.some((piece) => piece.includes(' '))) {
    return problem({ id: 'typed.space-inside', with: { text: whole.text } });
  }
  const [first, second, third, fourth] = pieces;
  if (first === undefined || second === undefined || third === undefined || fourth === undefined) {
    return problem({ id: WORDS[shape].few, with: whole });
  }
  if (pieces.length > 4) return problem({ id: WORDS[shape].many, with: whole });
  const wrong = pieces.map((piece, index) => wrongOctet(piece, index + 1, whole.text)).find((it) => it);
  if (wrong !== undefined) return problem(wrong);
  return ok([Number(first), Number(second), Number(third), Number(fourth)]);
}

/** Whether the four numbers have all their ones before their noughts (RFC 4632, section 3.1). */
export function isContiguous(octets: Octets): boolean {
  return Validator.isValidIPv4Mask(octets.join('.'))[0];
}

function foreignCharacter(text: string, shape: Shape): Sentence | undefined {
  const character = /[^0-9., ]/u.exec(text)?.[0];
  if (character === undefined) return undefined;
  const letter = /\p{L}/u.exec(text)?.[0];
  if (letter === undefined) return { id: 'typed.stray', with: { text: quoted(text), character } };
  const digit = DIGIT_LIKE.get(letter);
  if (digit !== undefined && /^[0-9oOlI., ]*$/.test(text) && /[0-9]/.test(text)) {
    return { id: 'typed.letter-for-digit', with: { text: quoted(text), letter, digit } };
  }
  return { id: WORDS[shape].letters, with: { text: quoted(text), letter } };
}

function wrongOctet(piece: string, position: number, text: string): Sentence | undefined {
  const number = quoted(piece);
  if (Number(piece) > 255) return { id: 'typed.octet-too-big', with: { text, position, number } };
  if (!/^0\d/.test(piece)) return undefined;
  return { id: 'typed.leading-zero', with: { text, position, number, plain: Number(piece) } };
}
