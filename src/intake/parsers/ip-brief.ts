import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { type AdapterDraft, addAddress, draftOf } from '../unix/adapter-draft.js';
import { kindOfAdapter } from '../unix/adapter-kind.js';
import { firstWhere, walk } from '../unix/walk.js';
import { macOf, sides, wordsOf } from '../unix/words.js';

const HEAD =
  /^([^\s@]{1,40})(?:@\S{1,40})?\s+(UP|DOWN|UNKNOWN|LOWERLAYERDOWN|DORMANT|NOTPRESENT|TESTING)(?:\s+(.*))?$/;
const FLAGS = /^<([A-Z0-9_,-]{0,300})>$/;

/** `ip -br addr` and `ip -br link`: an adapter a line. */
export const ipBrief: Parser = {
  name: 'ip-brief',
  source: 'ip(8) of iproute2, option -brief',
  claims: (lines, from) => firstWhere(lines, from, (text) => isSure(adapterOf(text, 0)), HAS.capital),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const adapters: AdapterDraft[] = [];
  const understood = walk(lines, from, (text, line) => {
    const adapter = adapterOf(text, line);
    if (adapter === undefined) return 'end';
    adapters.push(adapter);
    return 'read';
  });
  return { seen: { adapters }, lines: understood };
}

/** A sentence can end in UP, too: a line that begins the format has an address, or a name that systems give. */
function isSure(adapter: AdapterDraft | undefined): boolean {
  if (adapter === undefined) return false;
  const count = adapter.addresses.length + adapter.addresses6.length;
  return count > 0 || adapter.mac !== undefined || adapter.kind !== 'unknown';
}

function adapterOf(text: string, line: number): AdapterDraft | undefined {
  const [, name, state, rest = ''] = HEAD.exec(text) ?? [];
  if (name === undefined || state === undefined) return undefined;
  const words = wordsOf(rest);
  const flags = FLAGS.exec(words.at(-1) ?? '')?.[1]?.split(',') ?? [];
  const adapter = draftOf(name, kindOfAdapter(name, flags));
  if (state !== 'UNKNOWN') adapter.isUp = { value: state === 'UP', line };
  return words.every((word, index) => readWord(adapter, words, word, index, line)) ? adapter : undefined;
}

function readWord(
  adapter: AdapterDraft,
  words: readonly string[],
  word: string,
  index: number,
  line: number,
): boolean {
  const before = words[index - 1];
  if (word === 'peer' || word === 'metric' || before === 'peer' || before === 'metric') return true;
  const mac = macOf(word);
  if (mac !== undefined) {
    if (adapter.kind !== 'loopback') adapter.mac = { value: mac, line };
    return true;
  }
  const [address, length] = sides(word);
  const peer = words[index + 1] === 'peer' ? sides(words[index + 2] ?? '')[1] : undefined;
  return addAddress(adapter, address, length ?? peer, line) || FLAGS.test(word);
}
