import { says } from '../unix/words.js';
import { SUFFIX_LABELS } from './ipconfig-words.js';

/** A label and what stands behind it. */
export interface Field {
  readonly label: string;
  readonly value: string;
  readonly indent: number;
}

/** Dots and blanks up to a colon. The label can have a colon of its own: `Vínculo: dirección IPv6 local. . . : fe80::1`. */
const LEADER = /[ .]{2,150}:/;
const FAR = 160;
const PLAIN = /^ {0,40}[^:]{2,80}:(?= |$)/;

/** How far the first word stands from the left. */
export function indentOf(text: string): number {
  return text.length - text.trimStart().length;
}

/** The field of a line with a dotted leader, as only ipconfig prints it. */
export function leaderField(text: string): Field | undefined {
  const near = text.slice(0, FAR);
  const found = LEADER.exec(near.trimStart());
  if (found === null || !found[0].includes('.') || found.index === 0) return undefined;
  const indent = indentOf(text);
  const behind = indent + found.index + found[0].length;
  return {
    label: text.slice(indent, indent + found.index),
    value: text.slice(behind).trim(),
    indent,
  };
}

/** The field of an indented line with a colon and no leader, as long labels leave no room for one; of those one is known. */
export function plainField(text: string): Field | undefined {
  const found = PLAIN.exec(text)?.[0];
  const indent = indentOf(text);
  if (found === undefined || (indent === 0 && !says(found, SUFFIX_LABELS))) return undefined;
  return { label: found.trim().slice(0, -1).trim(), value: text.slice(found.length).trim(), indent };
}
