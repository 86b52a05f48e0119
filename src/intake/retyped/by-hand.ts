import type { State } from './state-words.js';
import type { Token } from './tokens.js';

/** Whether a line says that the address was typed in by hand; nothing where it does not say. */
export function byHandOf(tokens: readonly Token[]): boolean | undefined {
  const dhcp = tokens.findIndex((token) => token.type === 'state' && token.state === 'dhcp');
  return dhcp === -1 ? plainWords(tokens) : byDhcp(tokens, dhcp);
}

/** `DHCP: on`, `DHCP enabled: no`, `no DHCP`, `IP settings: DHCP`. */
function byDhcp(tokens: readonly Token[], dhcp: number): boolean | undefined {
  let said: State | undefined;
  for (const token of tokens.slice(dhcp + 1)) {
    if (token.type === 'state') said = token.state;
    else if (token.type !== 'sign' && token.type !== 'filler') break;
  }
  if (said !== undefined) return said === 'off' || said === 'by-hand';
  const before = tokens[dhcp - 1];
  if (before?.type === 'state') return before.state === 'off' || before.state === 'by-hand';
  return tokens.some((token) => token.type === 'word') ? undefined : false;
}

/** `Static`, `configure IP: automatic`; of the DNS servers that says nothing about the address. */
function plainWords(tokens: readonly Token[]): boolean | undefined {
  const isAside = (token: Token): boolean =>
    token.type === 'word' || token.type === 'name' || (token.type === 'field' && token.field !== 'address');
  const hasValue = tokens.some((token) => token.type === 'value');
  if (!hasValue && tokens.some(isAside)) return undefined;
  const states = tokens.flatMap((token) => (token.type === 'state' ? [token.state] : []));
  const isByHand = states.includes('by-hand');
  if (isByHand === states.includes('automatic')) return undefined;
  return isByHand;
}
