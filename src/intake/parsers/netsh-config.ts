import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { indentOf } from '../windows/field.js';
import { NetshAdapter, netshField } from '../windows/netsh-adapter.js';
import { nextIndex, walkWide } from '../windows/walk.js';

/** `Configuration for interface "Ethernet"`; in Turkish and in Chinese the name does not come last. */
const HEADING = /^ {0,4}(?:[^\s":>][^":>]{0,80})?"([^"]{1,100})"[^":>]{0,60}$/;
const LONE = /^\s{0,80}(\S{1,60})$/;

/** `netsh interface ip show config`, `show addresses` and `show dns`, in any language. */
export const netshConfig: Parser = {
  name: 'netsh-config',
  source:
    'outputs published in English, German, Italian, Russian and Chinese, the first line also in Portuguese, Spanish and Turkish; the other languages from memory',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => headingAt(lines, text, index) !== undefined, HAS.quote),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: NetshAdapter[] = [];
  const understood = walkWide(lines, from, (text, line, index) => {
    const name = headingAt(lines, text, index);
    if (name !== undefined) {
      adapters.push(new NetshAdapter(name));
      return 'read';
    }
    const adapter = adapters.at(-1);
    const lone = LONE.exec(text)?.[1];
    if (lone !== undefined && adapter?.goOn(lone, line) === true) return 'read';
    const field = indentOf(text) > 0 || isDense(lines, index) ? netshField(text) : undefined;
    if (adapter === undefined || field === undefined) return 'end';
    adapter.add(field, line);
    return 'read';
  });
  return { seen: { adapters: adapters.map((one) => one.adapter) }, lines: understood };
}

/** The name in a heading. Below it stands DHCP, or the DNS servers: both are called so in every language. */
function headingAt(lines: readonly Line[], text: string, index: number): string | undefined {
  const name = text.includes('"') ? HEADING.exec(text)?.[1] : undefined;
  if (name === undefined) return undefined;
  const below = netshField(shortText(lines[nextIndex(lines, index)]));
  return below !== undefined && /DHCP|DNS/.test(below.label) ? name : undefined;
}

/** Whether there is no gap above the line: without indentation, what comes behind a gap is something else. */
function isDense(lines: readonly Line[], index: number): boolean {
  return shortText(lines[index - 1]) !== '';
}
