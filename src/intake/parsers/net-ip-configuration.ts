import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { furtherValue, listField } from '../windows/list-field.js';
import { NetIpAdapter } from '../windows/net-ip-adapter.js';
import { nextIndex, walkWide } from '../windows/walk.js';

/** Names that stand in no other list. */
const OWN =
  /^(?:InterfaceIndex|InterfaceDescription|IPv[46]DefaultGateway|Net(?:Profile|Adapter|Compartment|IPv[46]Interface)\..{1,40})$/;
const HEADS: ReadonlySet<string> = new Set(['InterfaceAlias', 'ComputerName']);
/** Names that it shares with other lists, or that people write. */
const SHARED: ReadonlySet<string> = new Set([
  'IPv4Address',
  'IPv6Address',
  'IPv6LinkLocalAddress',
  'IPv6TemporaryAddress',
  'DNSServer',
]);

/** `Get-NetIPConfiguration`, also with `-All` and `-Detailed`. It prints no masks. */
export const netIpConfiguration: Parser = {
  name: 'net-ip-configuration',
  source:
    'Microsoft, module NetTCPIP, Get-NetIPConfiguration; published outputs; the names of -Detailed from memory',
  claims: (lines, from) => firstWhere(lines, from, (text, index) => begins(lines, text, index), HAS.colon),
  take,
};

function begins(lines: readonly Line[], text: string, index: number): boolean {
  const label = text.includes(':') ? listField(text)?.label : undefined;
  if (label === undefined) return false;
  if (OWN.test(label)) return true;
  return HEADS.has(label) && isHead(lines, label, index);
}

/** Whether a list of an adapter begins here: that of a connection test begins with the same names. */
function isHead(lines: readonly Line[], label: string, index: number): boolean {
  const next = nextIndex(lines, index);
  const below = listField(shortText(lines[next]))?.label ?? '';
  if (label === 'ComputerName') return below === 'InterfaceAlias' && isHead(lines, below, next);
  return OWN.test(below);
}

function take(lines: readonly Line[], from: number): Taken {
  const adapters: NetIpAdapter[] = [];
  let isInside = false;
  const understood = walkWide(lines, from, (text, line, index) => {
    const field = listField(text);
    if (field !== undefined && (OWN.test(field.label) || SHARED.has(field.label))) {
      if (adapters.length === 0) adapters.push(new NetIpAdapter());
      adapters.at(-1)?.add(field, line);
      isInside = true;
      return 'read';
    }
    if (field !== undefined && HEADS.has(field.label) && isHead(lines, field.label, index)) {
      const isSame = adapters.length > 0 && !isInside;
      if (!isSame) adapters.push(new NetIpAdapter());
      adapters.at(-1)?.add(field, line);
      isInside = false;
      return 'read';
    }
    const further =
      field === undefined && shortText(lines[index - 1]) !== '' ? furtherValue(text) : undefined;
    if (further === undefined || adapters.length === 0) return 'end';
    adapters.at(-1)?.goOn(further, line);
    return 'read';
  });
  return { seen: { adapters: adapters.map((one) => one.adapter) }, lines: understood };
}
