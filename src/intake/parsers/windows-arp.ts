import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import type { Neighbour, NeighbourState } from '../seen.js';
import { firstWhere } from '../unix/walk.js';
import { address4, macOf } from '../unix/words.js';
import { INVALID, STATIC } from '../windows/arp-words.js';
import { walkWide } from '../windows/walk.js';

/** `Interface: 172.23.40.5 --- 0xb`; Windows XP and before: `Interface: 172.23.40.5 on Interface 0x2`. */
const HEAD = /^ {0,8}\p{L}[^\d:]{0,40}: ?(\d{1,3}(?:\.\d{1,3}){3})\s(?:---|\D{1,40}) 0x[0-9a-f]{1,8}$/iu;
const ROW =
  /^ {0,12}(\d{1,3}(?:\.\d{1,3}){3})(?:\s{1,30}([0-9a-f]{2}(?:-[0-9a-f]{2}){5}))?(?:\s{1,40}(\p{L}[^\d]{0,30}))?$/iu;
/** The column of the hardware address stands empty. */
const NO_HARDWARE = /^ {0,12}[\d.]{7,15} {8,40}\p{L}\S{0,30}$/u;
/** To these nobody answers: Windows keeps them as static, in whatever language it says so. */
const GROUP = /^(?:ff:ff:ff:ff:ff:ff|01:00:5e:)/;
const NOBODY = '00:00:00:00:00:00';

interface Row {
  readonly neighbour: Omit<Neighbour, 'state'>;
  readonly type: string;
  readonly hasHardware: boolean;
}

/** `arp -a` of Windows, for one or more interfaces, in any language. */
export const windowsArp: Parser = {
  name: 'windows-arp',
  source:
    'outputs published in German, French, Spanish, Russian and Japanese; the other languages from memory',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text) => HEAD.test(text) || rowOf(text, 0, undefined)?.hasHardware === true,
      HAS.digit,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const rows: Row[] = [];
  let adapter: string | undefined;
  let isBelowHead = false;
  const understood = walkWide(lines, from, (text, line) => {
    const head = HEAD.exec(text)?.[1];
    if (head !== undefined) {
      adapter = head;
      isBelowHead = true;
      return 'read';
    }
    const row = rowOf(text, line, adapter);
    const isColumns = row === undefined && isBelowHead && /^\s*\p{L}[^\d:>]{5,100}$/u.test(text);
    isBelowHead = false;
    if (isColumns) return 'read';
    if (row === undefined || (!row.hasHardware && (adapter === undefined || !NO_HARDWARE.test(text))))
      return 'end';
    rows.push(row);
    return 'read';
  });
  const fixed = new Set([...STATIC, ...rows.filter(isGroup).map((row) => row.type)]);
  const neighbours = rows.map(({ neighbour, type }) => ({
    ...neighbour,
    state: stateOf(neighbour.mac, type, fixed),
  }));
  return { seen: { neighbours }, lines: understood };
}

function rowOf(text: string, line: number, adapter: string | undefined): Row | undefined {
  const [, place, hardware, type = ''] = ROW.exec(text) ?? [];
  const address = address4(place);
  if (address === undefined) return undefined;
  const mac = macOf(hardware?.replaceAll('-', ':'));
  return {
    neighbour: {
      address,
      ...(mac !== undefined && mac !== NOBODY && { mac }),
      ...(adapter !== undefined && { adapter }),
      line,
    },
    type: type.trim().toLowerCase(),
    hasHardware: hardware !== undefined,
  };
}

function isGroup({ neighbour, type }: Row): boolean {
  return type !== '' && neighbour.mac !== undefined && GROUP.test(neighbour.mac);
}

function stateOf(mac: string | undefined, type: string, fixed: ReadonlySet<string>): NeighbourState {
  if (INVALID.has(type)) return 'failed';
  if (fixed.has(type)) return 'static';
  return mac === undefined ? 'failed' : 'unknown';
}
