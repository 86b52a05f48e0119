import type { Sentence } from '../messages/say.js';

/** A program and its words. No shell ever sees them. */
export type Argv = readonly [string, ...string[]];

/** A command that only reads, and whose output the parsers know. */
export interface Command {
  readonly id: 'addresses' | 'routes' | 'neighbours' | 'dns';
  readonly argv: Argv;
  readonly why: Sentence;
  /** Read by ourselves instead of by the command that would print it. */
  readonly file?: string;
  /** What is run where the first is missing or fails. */
  readonly instead?: Argv;
}

const WHY = {
  addresses: { id: 'here.why-addresses' },
  everything: { id: 'here.why-everything' },
  routes: { id: 'here.why-routes' },
  neighbours: { id: 'here.why-neighbours' },
  dns: { id: 'here.why-dns' },
} as const satisfies Readonly<Record<string, Sentence>>;

const RESOLV_CONF = '/etc/resolv.conf';

/** ip(8) of iproute2, ifconfig(8), route(8) and arp(8) of net-tools, resolv.conf(5). */
const LINUX: readonly Command[] = [
  { id: 'addresses', argv: ['ip', '-j', 'addr'], why: WHY.addresses, instead: ['ifconfig'] },
  { id: 'routes', argv: ['ip', '-j', 'route'], why: WHY.routes, instead: ['route', '-n'] },
  { id: 'neighbours', argv: ['ip', '-j', 'neigh'], why: WHY.neighbours, instead: ['arp', '-n'] },
  { id: 'dns', argv: ['cat', RESOLV_CONF], why: WHY.dns, file: RESOLV_CONF },
];

/** ifconfig(8), netstat(1), arp(8) and scutil(8) of macOS. */
const DARWIN: readonly Command[] = [
  { id: 'addresses', argv: ['ifconfig'], why: WHY.addresses },
  { id: 'routes', argv: ['netstat', '-rn', '-f', 'inet'], why: WHY.routes },
  { id: 'neighbours', argv: ['arp', '-an'], why: WHY.neighbours },
  { id: 'dns', argv: ['scutil', '--dns'], why: WHY.dns },
];

/** The commands of Windows that Microsoft documents under "Windows commands". */
const WINDOWS: readonly Command[] = [
  { id: 'addresses', argv: ['ipconfig', '/all'], why: WHY.everything },
  { id: 'routes', argv: ['route', 'print', '-4'], why: WHY.routes },
  { id: 'neighbours', argv: ['arp', '-a'], why: WHY.neighbours },
];

/** What is run to see the network of this computer; `platform` as Node names it. Nothing on a system that is not known. */
export function commandsOn(platform: string): readonly Command[] {
  if (platform === 'linux') return LINUX;
  if (platform === 'darwin') return DARWIN;
  return platform === 'win32' ? WINDOWS : [];
}

/** A command as a person would type it. */
export function typed(argv: Argv): string {
  return argv.join(' ');
}
