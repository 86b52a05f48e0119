import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Hop } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4 } from '../unix/words.js';

const ROW = /^\s{0,4}(\d{1,3})\.(?:\|--|\s)\s?(\S{1,255})(?: \((\S{1,64})\))?\s{1,60}[\d.]{1,6}%?\s{1,12}\d/;
const MORE = /^\s{2,8}(?:\|\s{0,3})?[|`]?(?:\||`)?-?-?\s?\S{1,255}$/;
const HEAD = /^HOST: \S{1,255}\s{1,80}Loss%/;
const START = /^Start: \S/;

/** `mtr -r`. It does not say for whom it looked. */
export const mtr: Parser = {
  name: 'mtr',
  source: 'mtr(8)',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => {
        if (HEAD.test(text) || (text.includes('.|-- ') && ROW.test(text))) return true;
        return START.test(text) && HEAD.test(lines[index + 1]?.text.slice(0, 500) ?? '');
      },
      HAS.blank,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const hops: Hop[] = [];
  const understood = walk(lines, from, (text, line) => {
    if (hops.length === 0 && (START.test(text) || HEAD.test(text))) return 'read';
    const [, number, name, place] = ROW.exec(text) ?? [];
    if (number === undefined) return hops.length > 0 && MORE.test(text) ? 'pass' : 'end';
    const address = address4(place ?? name);
    hops.push({ number: Number(number), ...(address !== undefined && { address }), line });
    return 'read';
  });
  return { seen: { traces: [{ target: '', hops, line: lines[from]?.number ?? 0 }] }, lines: understood };
}
