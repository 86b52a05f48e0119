import type { Address } from '../../values/address.js';
import { address4 } from '../unix/words.js';

/** `cam.example [172.23.40.57]`; the address may be one of the other kind. */
const NAMED = /(\S{1,255}) \[([0-9a-f.:]{2,45}(?:%\S{1,20})?)\]/i;
const ADDRESS4 = /(?<![\d.])\d{1,3}(?:\.\d{1,3}){3}(?![\d.])/;
const ADDRESS6 = /(?<![0-9a-f:.])[0-9a-f]{1,4}(?::[0-9a-f]{0,4}){2,7}(?:%\d{1,9})?(?![0-9a-f])/i;

/** A host as a line names it. */
export interface Target {
  readonly name: string;
  readonly address: Address | undefined;
  /** Whether a name stands before the address. */
  readonly isNamed: boolean;
  /** The line without it. */
  readonly rest: string;
}

/** The host in a line: a name with its address in brackets, or an address alone. */
export function targetIn(text: string): Target | undefined {
  const named = text.includes(' [') ? NAMED.exec(text) : null;
  const said =
    named?.[0] ?? ADDRESS4.exec(text)?.[0] ?? (text.includes(':') ? ADDRESS6.exec(text)?.[0] : undefined);
  if (said === undefined) return undefined;
  const name = named?.[1] ?? said;
  return {
    name,
    address: address4(named?.[2] ?? said),
    isNamed: named !== null,
    rest: text.replace(said, ' '),
  };
}
