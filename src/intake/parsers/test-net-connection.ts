import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, shortText } from '../unix/walk.js';
import { furtherValue, listField } from '../windows/list-field.js';
import { ConnectionTest, complaintIn } from '../windows/test-connection.js';
import { nextIndex, walkWide } from '../windows/walk.js';

const LABELS: ReadonlySet<string> = new Set([
  'ComputerName',
  'RemoteAddress',
  'RemotePort',
  'NameResolutionResults',
  'MatchingIPsecRules',
  'NetworkIsolationContext',
  'IsAdmin',
  'InterfaceAlias',
  'SourceAddress',
  'NetRoute (NextHop)',
  'PingSucceeded',
  'PingReplyDetails (RTT)',
  'TcpTestSucceeded',
  'TraceRoute',
]);
/** Names that stand in no other list. */
const OWN: ReadonlySet<string> = new Set([
  'RemotePort',
  'NameResolutionResults',
  'PingSucceeded',
  'PingReplyDetails (RTT)',
  'TcpTestSucceeded',
]);

/** `Test-NetConnection`, also `-Port`, `-TraceRoute` and `-InformationLevel Detailed`. One test at a time. */
export const testNetConnection: Parser = {
  name: 'test-net-connection',
  source: 'Microsoft, module NetTCPIP, Test-NetConnection; published outputs in five languages',
  claims: (lines, from) => firstWhere(lines, from, (text, index) => begins(lines, text, index), HAS.colon),
  take,
};

function begins(lines: readonly Line[], text: string, index: number): boolean {
  if (!text.includes(':')) return false;
  if (complaintIn(text) !== undefined) return true;
  const label = listField(text)?.label ?? '';
  if (OWN.has(label)) return true;
  return (
    label === 'ComputerName' &&
    listField(shortText(lines[nextIndex(lines, index)]))?.label === 'RemoteAddress'
  );
}

function take(lines: readonly Line[], from: number): Taken {
  const test = new ConnectionTest();
  let isList = false;
  const understood = walkWide(lines, from, (text, line, index) => {
    const complaint = complaintIn(text);
    if (complaint !== undefined) {
      if (isList) return 'end';
      test.complain(complaint, line);
      return 'read';
    }
    const field = listField(text);
    if (field !== undefined && LABELS.has(field.label)) {
      if (test.has(field.label)) return 'end';
      isList = true;
      test.add(field, line);
      return 'read';
    }
    const further = isList && shortText(lines[index - 1]) !== '' ? furtherValue(text) : undefined;
    if (further === undefined || field !== undefined) return 'end';
    test.goOn(further, line);
    return 'read';
  });
  return { seen: test.seen(), lines: understood };
}
