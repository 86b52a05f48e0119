import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { PortTry } from '../seen.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4 } from '../unix/words.js';

/** The meter of curl stands before the first star where it was not switched off. */
const TRYING = /\* {1,4}Trying \[?([^\s\]]{1,64}?)\]?(?::(\d{1,5}))?\.\.\.$/;
const OPEN = /^\* (?:Connected to|Established connection to) (\S{1,255}) \((\S{1,64})\)? port (\d{1,5})\b/;
const OPEN_NEW = /^\* Established connection to (\S{1,255}) \((\S{1,64}) port (\d{1,5})\)/;
const SHUT = /^(?:\* |curl: \(\d{1,3}\) )(?:connect to|Failed to connect to) (\S{1,255}) port (\d{1,5})\b/;
/** Said once more at the end, with the name where single addresses were said before. */
const SUMMARY = /Failed to connect to/;
const LATE = /^(?:\* |curl: \(28\) )(?:Connection timed out|Connection timeout|Operation timed out)/;
const TALK = /^(?:[*<>{}] ?|\s{0,3}\d{1,3} {1,6}\d|\s{1,4}% Total|\s{20,60}Dload|curl: \(\d)/;
/** What is sent begins with the sign that mail programs put before what they quote: cleaning takes it away. */
const SENT =
  /^(?:(?:GET|HEAD|POST|PUT|OPTIONS) \S{1,500} HTTP\/\d|(?:Host|User-Agent|Accept|Authorization|Range): ?\S)/;

/** `curl -v`: only whether the port opened, nothing of what was said behind it. */
export const curl: Parser = {
  name: 'curl',
  source: 'curl(1), option --verbose',
  claims: (lines, from) => firstWhere(lines, from, (text) => TRYING.test(text) || SHUT.test(text), HAS.blank),
  take,
};

interface Pending {
  readonly target: string;
  readonly address: Address | undefined;
  readonly port: number;
  readonly line: number;
}

function take(lines: readonly Line[], from: number): Taken {
  const ports: PortTry[] = [];
  let pending: Pending | undefined;
  const close = (isOpen: boolean, line: number, target?: string, port?: number, isSummary = false): void => {
    const number = port ?? pending?.port ?? 0;
    const name = target ?? pending?.target ?? '';
    const address = address4(name) ?? pending?.address;
    const last = ports.at(-1);
    const isSaid = last?.port === number && last.isOpen === isOpen && (isSummary || last.target === name);
    if (number < 1 || number > 65_535 || isSaid) return;
    ports.push({ target: name, ...(address !== undefined && { address }), port: number, isOpen, line });
    pending = undefined;
  };
  const understood = walk(lines, from, (text, line, index) => {
    const trying = TRYING.exec(text);
    const [, name, place, port] = OPEN_NEW.exec(text) ?? OPEN.exec(text) ?? [];
    const shut = SHUT.exec(text);
    if (trying !== null) {
      const target = trying[1] ?? '';
      pending = { target, address: address4(target), port: Number(trying[2] ?? 0), line };
    } else if (name !== undefined) {
      pending = { target: name, address: address4(place), port: Number(port), line };
      close(true, line, name, Number(port));
    } else if (shut !== null) {
      close(false, line, shut[1], Number(shut[2]), SUMMARY.test(text));
    } else if (LATE.test(text) && pending !== undefined) {
      close(false, line);
    } else if (index > from && !TALK.test(text) && !SENT.test(text)) {
      return 'end';
    }
    return 'read';
  });
  return { seen: { ports }, lines: understood };
}
