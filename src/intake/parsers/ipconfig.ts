import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { adapterHeading, isTitle, nameIn } from '../windows/adapter-heading.js';
import { type Field, indentOf, leaderField, plainField } from '../windows/field.js';
import { IpconfigAdapter } from '../windows/ipconfig-adapter.js';
import { walkWide } from '../windows/walk.js';

const WIDTH = 80;
const LEADER = /\. \. \./;
const CUT = /[0-9a-f:.%]$/i;
const REST = /^[0-9a-f:.%]{1,40}(?:\(.{0,40})?$/i;
const LONE_ADDRESS = /^\s*[0-9a-f]{0,4}[.:][0-9a-f:.]{2,60}(?:%\d{1,9})?$|^\s*\d{1,3}(?:\.\d{1,3}){3}$/i;

/** `ipconfig` and `ipconfig /all` of Windows XP to 11, in any language. */
export const ipconfig: Parser = {
  name: 'ipconfig',
  source:
    'outputs published in most of the twelve languages; Polish, and some words of the others, from memory',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) =>
        (LEADER.test(text) && leaderField(text) !== undefined) ||
        (text.endsWith(':') && adapterHeading(lines, index) !== undefined) ||
        isTitle(lines, index),
      HAS.colon,
      HAS.capital,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: IpconfigAdapter[] = [];
  let isHost = isTitle(lines, from);
  let last: Field | undefined;
  let rests = -1;
  const understood = walkWide(lines, from, (text, line, index) => {
    if (index === from && isHost) return 'read';
    if (rests === index) return 'read';
    const heading = adapterHeading(lines, index);
    if (heading !== undefined) {
      adapters.push(new IpconfigAdapter(heading, nameIn(heading)));
      isHost = false;
      last = undefined;
      return 'read';
    }
    const rest = restBehind(lines, index);
    if (rest !== '') rests = index + 1;
    const field =
      leaderField(`${text}${rest}`) ?? (adapters.length > 0 || isHost ? plainField(text) : undefined);
    if (field !== undefined && (last === undefined || field.indent <= last.indent + 4 || LEADER.test(text))) {
      last = field;
      if (isHost) return 'read';
      if (adapters.length === 0) adapters.push(new IpconfigAdapter('', ''));
      adapters.at(-1)?.add(field, line);
      return 'read';
    }
    if (last === undefined || isTitle(lines, index)) return 'end';
    if (indentOf(text) <= last.indent && !LONE_ADDRESS.test(text))
      return isWrapped(lines, index) ? 'read' : 'end';
    if (!isHost) adapters.at(-1)?.goOn(text.trim(), line);
    return 'read';
  });
  const told = adapters.filter((one) => one.hasAnything).map((one) => one.adapter);
  return { seen: { adapters: told }, lines: understood };
}

/** The end of an address that the console, 80 columns wide, pushed on to the next line. */
function restBehind(lines: readonly Line[], index: number): string {
  const text = shortText(lines[index]);
  const next = shortText(lines[index + 1]);
  return text.length === WIDTH && CUT.test(text) && REST.test(next) ? next : '';
}

/** Whether a line is the rest of the one above, cut at the edge of the console. */
function isWrapped(lines: readonly Line[], index: number): boolean {
  const above = shortText(lines[index - 1]);
  return above.length >= WIDTH - 1 && above.length <= WIDTH && !/>/.test(shortText(lines[index]));
}
