import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { type AdapterDraft, draftOf } from '../unix/adapter-draft.js';
import { kindOfAdapter, kindOfName } from '../unix/adapter-kind.js';
import { readIfconfigLine } from '../unix/ifconfig-lines.js';
import { firstWhere, shortText, walk } from '../unix/walk.js';
import { macOf, wordsOf } from '../unix/words.js';

const HEAD = /^(\S{1,40}): flags=[0-9a-f]{1,16}<([A-Z0-9_,]{0,300})>/i;
/** The head that net-tools printed before 2011 and busybox prints still: `eth0      Link encap:Ethernet  HWaddr ...`. */
const OLD_HEAD = /^(\S{1,40})\s{1,12}\S.{0,40}:\S/;
const OLD_INSIDE = /^\s{2,20}(?:inet6? ?[^\d:]{1,20}: ?[0-9a-f]|(?:[A-Z]{2,20} ){1,12}\s?MTU:)/;
const OLD_LABEL = /^\S{1,40}\s{1,12}Link encap:/;

/** `ifconfig` of Linux (both generations), busybox, macOS and the BSDs. */
export const ifconfig: Parser = {
  name: 'ifconfig',
  source: 'ifconfig(8) of net-tools, busybox, macOS, FreeBSD and OpenBSD',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => headOf(lines, text, index, 0) !== undefined, HAS.colon),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: AdapterDraft[] = [];
  const understood = walk(lines, from, (text, line, index) => {
    const headed = headOf(lines, text, index, line);
    if (headed !== undefined) {
      adapters.push(headed);
      return 'read';
    }
    const adapter = adapters.at(-1);
    if (adapter === undefined) return 'end';
    const said = readIfconfigLine(adapter, text, line);
    return said === 'pass' && !/^\s/.test(text) ? 'end' : said;
  });
  return { seen: { adapters }, lines: understood };
}

function headOf(lines: readonly Line[], text: string, index: number, line: number): AdapterDraft | undefined {
  const [, name, list] = HEAD.exec(text) ?? [];
  if (name !== undefined && list !== undefined) {
    const flags = list.split(',');
    const adapter = draftOf(name, kindOfAdapter(name, flags));
    adapter.isUp = { value: flags.includes('UP') && flags.includes('RUNNING'), line };
    return adapter;
  }
  const old = OLD_HEAD.exec(text)?.[1];
  if (old === undefined || !(OLD_LABEL.test(text) || OLD_INSIDE.test(shortText(lines[index + 1])))) {
    return undefined;
  }
  const adapter = draftOf(old, kindOfName(old));
  const mac = macOf(wordsOf(text).at(-1));
  if (mac !== undefined) adapter.mac = { value: mac, line };
  return adapter;
}
