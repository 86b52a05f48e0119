import { inWords, type Sentence } from '../../src/messages/say.js';
import { type Address, parseAddress } from '../../src/values/address.js';
import { type Mask, parseMask } from '../../src/values/mask.js';

/** A dotted address as a value; a test that writes a wrong one stops here. */
export function address(text: string): Address {
  const parsed = parseAddress(text);
  if (!parsed.ok) throw new Error(inWords(parsed.problem));
  return parsed.value;
}

/** A dotted mask or a prefix such as `/24` as a value. */
export function mask(text: string): Mask {
  const parsed = parseMask(text);
  if (!parsed.ok) throw new Error(inWords(parsed.problem));
  return parsed.value;
}

export function bits(value: number): Address {
  return { kind: 'ipv4', bits: value };
}

export function prefix(value: number): Mask {
  return { kind: 'mask', prefix: value };
}

export function words(lines: readonly Sentence[]): readonly string[] {
  return lines.map(inWords);
}
