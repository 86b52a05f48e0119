import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { type AdapterDraft, addAddress, draftOf } from '../unix/adapter-draft.js';
import { kindOfAdapter } from '../unix/adapter-kind.js';
import { firstWhere, type Step, walk } from '../unix/walk.js';
import { after, macOf, sides, wordsOf } from '../unix/words.js';

const HEAD = /^\d{1,6}: ([^\s:@]{1,40})(?:@[^\s:]{1,40})?: <([A-Z0-9_,-]{0,300})>/;
const KNOWN = /^(?:valid_lft|altname|alias|promiscuity|RX|TX|vlan|bridge|tun|veth|link-netns)\b/;

/** `ip addr` and `ip link`. */
export const ipAddress: Parser = {
  name: 'ip-address',
  source: 'ip-address(8) of iproute2',
  claims: (lines, from) => firstWhere(lines, from, (text) => HEAD.test(text), HAS.digit | HAS.colon),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: AdapterDraft[] = [];
  const understood = walk(lines, from, (text, line) => {
    const [, name, list] = HEAD.exec(text) ?? [];
    if (name !== undefined && list !== undefined) {
      adapters.push(headed(name, list.split(','), line));
      return 'read';
    }
    const adapter = adapters.at(-1);
    return adapter === undefined ? 'end' : readDetail(adapter, text, line);
  });
  return { seen: { adapters }, lines: understood };
}

function headed(name: string, flags: readonly string[], line: number): AdapterDraft {
  const adapter = draftOf(name, kindOfAdapter(name, flags));
  adapter.isUp = { value: flags.includes('UP') && flags.includes('LOWER_UP'), line };
  return adapter;
}

function readDetail(adapter: AdapterDraft, text: string, line: number): Step {
  const words = wordsOf(text);
  const [label = '', value = ''] = words;
  const isInside = /^\s/.test(text);
  if (label.startsWith('link/')) {
    const mac = macOf(value);
    if (mac !== undefined && label === 'link/ether') adapter.mac = { value: mac, line };
    return 'read';
  }
  if (label === 'inet' || label === 'inet6') {
    const [address, length] = sides(value);
    if (!addAddress(adapter, address, length ?? sides(after(words, 'peer') ?? '')[1], line)) return 'pass';
    if (label === 'inet' && words.includes('dynamic')) adapter.isByHand = { value: false, line };
    return 'read';
  }
  if (KNOWN.test(label)) return 'read';
  return isInside ? 'pass' : 'end';
}
