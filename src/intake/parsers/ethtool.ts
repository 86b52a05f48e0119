import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { draftOf } from '../unix/adapter-draft.js';
import { kindOfName } from '../unix/adapter-kind.js';
import { firstWhere, walk } from '../unix/walk.js';

const HEAD = /^Settings for (\S{1,40}):$/;
const SPEED = /^\s{0,20}Speed: (\d{1,7})Mb\/s/;
const DUPLEX = /^\s{0,20}Duplex: (Full|Half)\b/;
const LINK = /^\s{0,20}Link detected: (yes|no)\b/;
const FIELD = /^\s{1,20}[A-Z][A-Za-z-]{1,30}(?: [A-Za-z-]{1,30}){0,5}: /;

/** `ethtool eth0`. */
export const ethtool: Parser = {
  name: 'ethtool',
  source: 'ethtool(8)',
  claims: (lines, from) => firstWhere(lines, from, (text) => HEAD.test(text), HAS.colon),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const name = HEAD.exec(lines[from]?.text ?? '')?.[1] ?? '';
  const adapter = draftOf(name, kindOfName(name));
  const understood = walk(lines, from, (text, line, index) => {
    if (index === from) return 'read';
    const speed = SPEED.exec(text)?.[1];
    const duplex = DUPLEX.exec(text)?.[1];
    const link = LINK.exec(text)?.[1];
    if (speed !== undefined) adapter.speed = { value: Number(speed), line };
    if (duplex !== undefined) adapter.duplex = { value: duplex === 'Full' ? 'full' : 'half', line };
    if (link !== undefined) adapter.isUp = { value: link === 'yes', line };
    if (speed !== undefined || duplex !== undefined || link !== undefined || FIELD.test(text)) return 'read';
    return /^\s/.test(text) ? 'pass' : 'end';
  });
  return { seen: { adapters: [adapter] }, lines: understood };
}
