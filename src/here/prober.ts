import { lookup } from 'node:dns';
import { connect } from 'node:net';
import type { Lookup } from '../intake/seen.js';
import { textOf } from '../intake/text-of.js';
import { type Address, parseAddress, showAddress } from '../values/address.js';
import type { Argv } from './commands.js';
import type { Machine } from './machine.js';

/** What came of a knock at a port; `untried` where the fault lies with this computer. */
export type Knock = 'open' | 'closed' | 'untried';

/** What the system's resolver said of a name. */
export type Named = Pick<Lookup, 'outcome' | 'addresses'>;

/** The three things that may be tried on the network, so that tests can answer in its place. */
export interface Prober {
  /** What the ping command printed; nothing where there is none. */
  readonly ping: (address: Address) => Promise<string | undefined>;
  readonly knock: (address: Address, port: number) => Promise<Knock>;
  readonly lookUp: (name: string) => Promise<Named>;
}

/** Windows waits four seconds for each of three answers, and says only at the end that a host is unreachable. */
const PING_LIMIT = 15_000;
const KNOCK_LIMIT = 2000;
const LOOKUP_LIMIT = 3000;

/** The network that this computer is on. `platform` as Node names it. */
export function thisProber(machine: Machine, platform: string = process.platform): Prober {
  return {
    ping: async (address) => {
      const ran = await machine.run(pingArgv(address, platform), PING_LIMIT);
      return ran.kind === 'ended' ? `${textOf(ran.output)}\n${textOf(ran.errors)}` : undefined;
    },
    knock,
    lookUp,
  };
}

/**
 * Three echo requests: ping(8) of iputils and busybox (-W in seconds), of macOS (-W in milliseconds), and ping of
 * Windows (-n is the count). All but Windows end four seconds after the first request; on Linux a silent ARP has shown
 * itself after three.
 */
export function pingArgv(address: Address, platform: string): Argv {
  const target = showAddress(address);
  if (platform === 'win32') return ['ping', '-n', '3', target];
  return ['ping', '-n', '-c', '3', '-W', platform === 'darwin' ? '2000' : '2', target];
}

/** The far side refused, or nothing came back: POSIX.1-2017, connect(). */
const CLOSED: ReadonlySet<string> = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'ETIMEDOUT',
  'EHOSTUNREACH',
  'EHOSTDOWN',
  'ENETUNREACH',
]);

function knock(address: Address, port: number): Promise<Knock> {
  return new Promise((resolve) => {
    const socket = connect({ host: showAddress(address), port });
    const end = (said: Knock): void => {
      clearTimeout(limit);
      socket.destroy();
      resolve(said);
    };
    const limit = setTimeout(() => end('closed'), KNOCK_LIMIT);
    socket.once('connect', () => end('open'));
    socket.on('error', (error: NodeJS.ErrnoException) => {
      end(CLOSED.has(error.code ?? '') ? 'closed' : 'untried');
    });
  });
}

/** The codes of getaddrinfo as Node gives them. What the resolver says too late counts as no answer. */
const OUTCOMES: Readonly<Record<string, Lookup['outcome']>> = {
  ENOTFOUND: 'no-such-name',
  EAI_AGAIN: 'no-answer',
};

function lookUp(name: string): Promise<Named> {
  return new Promise((resolve) => {
    const limit = setTimeout(() => resolve({ outcome: 'no-answer', addresses: [] }), LOOKUP_LIMIT);
    lookup(name, { all: true }, (error, found) => {
      clearTimeout(limit);
      if (error !== null) return resolve({ outcome: OUTCOMES[error.code ?? ''] ?? 'failed', addresses: [] });
      resolve({ outcome: 'answered', addresses: found.flatMap(({ address }) => ipv4(address)) });
    });
  });
}

function ipv4(text: string): readonly Address[] {
  const address = parseAddress(text);
  return address.ok ? [address.value] : [];
}
