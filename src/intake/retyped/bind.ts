import type { Address } from '../../values/address.js';
import type { Address6 } from '../../values/address6.js';
import type { Mask } from '../../values/mask.js';
import type { DEVICE_WORDS } from './device-words.js';
import type { Field } from './field-words.js';
import type { Token } from './tokens.js';
import type { Value } from './values.js';

type Device = keyof typeof DEVICE_WORDS;

/** What a value is, by the word that names it; `lone` where none does. */
export type Role = Exclude<Field, 'foreign' | 'mask'> | 'device' | 'lone';

/** So many words that mean nothing here may stand between a name and its value; a device has a name of its own. */
const MOST_BETWEEN = 1;
const MOST_IN_NAME = 3;

/** A value with what names it. */
export type Bound = { readonly start: number; readonly end: number } & (
  | {
      readonly as: Role;
      readonly address: Address;
      readonly mask?: Mask;
      readonly device?: Device;
    }
  | { readonly as: Role; readonly address6: Address6; readonly device?: Device }
  | { readonly as: 'mask'; readonly mask: Mask; readonly isNamed: boolean }
  | { readonly as: 'mac'; readonly mac: string }
);

/** A word that names the value before or behind it. */
export type Label = Extract<Token, { type: 'field' | 'device' }>;

type ValueToken = Extract<Token, { type: 'value' }>;

export interface Binding {
  readonly bounds: readonly Bound[];
  /** Values that cannot be what their words say. */
  readonly misfits: number;
  /** The word at the end that no value follows. */
  readonly open?: Label;
}

/** Gives each value of a line the word that names it, before it or behind it. `before` is left from the line above. */
export function bind(tokens: readonly Token[], before?: Label): Binding {
  const bounds: Bound[] = [];
  let misfits = 0;
  const isBehind = before === undefined && namesStandBehind(tokens);
  let label = isBehind ? undefined : before;
  let device: Device | undefined;
  let strangers = 0;
  for (const [at, token] of tokens.entries()) {
    if (token.type === 'field' || token.type === 'device') {
      if (token.type === 'device') device = token.device;
      if (!isBehind && !(isMoreExact(label, token) && tokens[at - 1] === label)) label = token;
      strangers = 0;
    } else if (token.type === 'word' || token.type === 'name') {
      strangers += 1;
      if (strangers > (label?.type === 'device' ? MOST_IN_NAME : MOST_BETWEEN)) label = undefined;
    } else if (token.type === 'value') {
      const named = isBehind ? labelBehind(tokens, at) : (label ?? onlyBehind(tokens, at));
      const owner = isBehind ? (named?.type === 'device' ? named.device : undefined) : device;
      const bound = boundOf(token, named, owner);
      if (bound === 'misfit') misfits += 1;
      else if (bound !== undefined) bounds.push(bound);
      if (token.value.shape === 'number' && bound === undefined) continue;
      // Further DNS servers follow with nothing but signs between.
      label = named?.type === 'field' && named.field === 'dns' && !isBehind ? named : undefined;
      if (bound !== undefined && bound !== 'misfit' && 'address' in bound) device = undefined;
      strangers = 0;
    }
  }
  return { bounds, misfits, ...(label === undefined || bounds.length > 0 ? {} : { open: label }) };
}

/** `gateway ip`, `DNS address`: the first word says what it is. */
function isMoreExact(label: Label | undefined, next: Label): boolean {
  return (
    label?.type === 'field' && label.field !== 'address' && next.type === 'field' && next.field === 'address'
  );
}

/** Whether value and name take turns in a line, value first, and every name fits what stands before it. */
function namesStandBehind(tokens: readonly Token[]): boolean {
  const turns = tokens.filter(
    (token): token is Label | ValueToken =>
      token.type === 'field' ||
      token.type === 'device' ||
      (token.type === 'value' && token.value.shape !== 'number'),
  );
  if (turns.length < 2 || turns.length % 2 === 1) return false;
  return turns.every((token, at) => {
    if (at % 2 === 0) return token.type === 'value';
    const value = turns[at - 1];
    return token.type !== 'value' && value?.type === 'value' && fits(value.value, token);
  });
}

function fits(value: Value, label: Label): boolean {
  if (label.type === 'device') return value.shape === 'dotted' && value.address !== undefined;
  if (label.field === 'mask') return 'mask' in value;
  if (label.field === 'foreign') return false;
  return (
    (value.shape === 'dotted' && value.address !== undefined) ||
    value.shape === 'ipv6' ||
    value.shape === 'mac'
  );
}

/** The next word that names a value, if no other value comes first. */
function labelBehind(tokens: readonly Token[], from: number): Label | undefined {
  for (let at = from + 1; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined || (token.type === 'value' && token.value.shape !== 'number')) return undefined;
    if (token.type === 'field' || token.type === 'device') return token;
  }
  return undefined;
}

/** A name in brackets behind the value, or one that has no other value: `172.23.40.1 (gateway)`. */
function onlyBehind(tokens: readonly Token[], at: number): Label | undefined {
  const [sign, label, after] = tokens.slice(at + 1, at + 4);
  if (sign?.type !== 'sign' || sign.sign !== '(' || after?.type !== 'sign' || after.sign !== ')')
    return undefined;
  return label?.type === 'field' || label?.type === 'device' ? label : undefined;
}

function boundOf(
  { value, start, end }: ValueToken,
  label: Label | undefined,
  device: Device | undefined,
): Bound | 'misfit' | undefined {
  const field = label?.type === 'field' ? label.field : undefined;
  if (field === 'foreign') return undefined;
  const place = { start, end };
  if (value.shape === 'mac') return { ...place, as: 'mac', mac: value.mac };
  if (value.shape === 'number') {
    return field === 'mask' && value.mask !== undefined
      ? { ...place, as: 'mask', mask: value.mask, isNamed: true }
      : undefined;
  }
  if (value.shape === 'mask') return { ...place, as: 'mask', mask: value.mask, isNamed: field === 'mask' };
  if (field === 'mask') {
    const mask = value.shape === 'dotted' ? value.mask : undefined;
    return mask === undefined ? 'misfit' : { ...place, as: 'mask', mask, isNamed: true };
  }
  const as: Role = field ?? (label?.type === 'device' ? 'device' : 'lone');
  const owner = device === undefined ? {} : { device };
  if (value.shape === 'ipv6') return { ...place, as, address6: value.address6, ...owner };
  if (value.address === undefined) {
    // Nothing but a mask can be one; behind another name it is a slip.
    const isMask = value.mask !== undefined && (as === 'lone' || as === 'device');
    return isMask && value.mask ? { ...place, as: 'mask', mask: value.mask, isNamed: false } : 'misfit';
  }
  const mask = value.with === undefined ? {} : { mask: value.with };
  return { ...place, as, address: value.address, ...mask, ...owner };
}
