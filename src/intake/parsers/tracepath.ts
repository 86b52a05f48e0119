import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Hop, Trace } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, says } from '../unix/words.js';

const ROW = /^\s?(\d{1,2})(\?)? ?:\s{1,4}(\S.{0,300})$/;
const PLACE = /(?:^|\()(\d{1,3}(?:\.\d{1,3}){3})(?=[)\s]|$)/;
const TIME = /\s[\d.]{1,12} ?ms(?:\s|$)/;
const START = /^\[LOCALHOST\]/;
const END = /^\s{4,6}\S{1,12} ?: pmtu \d/;
const REACHED: readonly string[] = ['reached', 'erreicht', 'atteint'];
const SILENT: readonly string[] = ['no reply', 'keine antwort', 'aucune réponse'];

/** `tracepath` of iputils, which names its target only as the last hop. */
export const tracepath: Parser = {
  name: 'tracepath',
  source: 'tracepath(8) of iputils and its message files (po/)',
  claims: (lines, from) =>
    firstWhere(lines, from, (text) => START.test(ROW.exec(text)?.[3] ?? ''), HAS.digit | HAS.square),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const hops: Hop[] = [];
  let reached: Address | undefined;
  let isOver = false;
  const understood = walk(lines, from, (text, line, index) => {
    if (isOver) return 'end';
    isOver = END.test(text);
    const [, number, , said] = ROW.exec(text) ?? [];
    if (isOver || (index === from && said !== undefined)) return 'read';
    if (number === undefined || said === undefined || !(TIME.test(said) || says(said, SILENT))) return 'end';
    const address = address4(PLACE.exec(said)?.[1]);
    if (hops.at(-1)?.number !== Number(number)) {
      hops.push({ number: Number(number), ...(address !== undefined && { address }), line });
    }
    if (says(said, REACHED)) reached = address;
    return 'read';
  });
  const trace: Trace = {
    target: '',
    ...(reached !== undefined && { address: reached }),
    hops,
    line: lines[from]?.number ?? 0,
  };
  return { seen: { traces: [trace] }, lines: understood };
}
