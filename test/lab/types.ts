/** One place of the site: each is a network namespace of its own. `twin` is a spare device, idle in a healthy site. */
export type Host =
  | 'camera'
  | 'computer'
  | 'phone'
  | 'mobile'
  | 'twin'
  | 'switch'
  | 'router'
  | 'box'
  | 'provider'
  | 'internet'
  | 'service'
  | 'carrier';

/** What a command printed, kept raw. */
export interface Ran {
  readonly host: Host;
  readonly argv: readonly string[];
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly ms: number;
  readonly timedOut: boolean;
}

/** Where the phone is: `phone` changes, `mobile` is a second phone that is always on mobile data. */
export type PhoneNetwork = 'wifi' | 'guest' | 'mobile';

/** What the mobile firm gives its phones. Without IPv4 they reach what has none but IPv4 by translation (NAT64). */
export type Carried = 'ipv4' | 'ipv6-only' | 'both';

/** A socket of the switch or the router, by what is plugged into it. */
export type Port = 'camera' | 'computer' | 'router' | 'internet';

/** What the app on a phone shows, and how its maker would log it; the words are those of an invented app. */
export interface AppScreen {
  /** `picture`: frames arrive. The others are what a person would read on the phone. */
  readonly shows:
    | 'picture'
    | 'camera-offline'
    | 'waiting'
    | 'no-connection'
    | 'wrong-password'
    | 'empty-list'
    | 'stutters';
  /** `forwarded`: straight to an address that was typed in, by a way opened in the router. */
  readonly way: 'direct' | 'punched' | 'relayed' | 'forwarded' | 'none';
  readonly words: string;
}

/** What was switched off and on, or closed and opened, before anybody rang. */
export type Tried = 'camera' | 'router' | 'phone';

/** What the people on site can say of the past, as they would say it: never what the fault is. */
export interface Story {
  readonly everWorked: boolean;
  readonly changed:
    | 'nothing'
    | 'router'
    | 'provider'
    | 'phone'
    | 'password'
    | 'building-work'
    | 'storm'
    | 'power-cut'
    | 'settings'
    | 'new-device'
    | 'firmware'
    | 'not-known';
  readonly when: 'today' | 'days' | 'weeks' | 'never-worked';
  /** None where left out. */
  readonly tried?: readonly Tried[];
}

/** The whole site. Hosts and interfaces are named in `site/README.md`. */
export interface Lab {
  readonly id: string;
  up(): Promise<void>;
  /** Removes what was recorded: namespaces, processes, folders. */
  down(): Promise<void>;
  /** Runs a command on a host; never throws for an exit code. Default time-out 4 s. */
  run(host: Host, argv: readonly string[], options?: { readonly timeoutMs?: number }): Promise<Ran>;
  nft(host: Host, rules: string): Promise<void>;
  /** Lines for `ip -batch -`; throws when one is refused. */
  ip(host: Host, batch: string): Promise<void>;
  /** Starts a process on a host under a key; it ends with the lab. */
  daemon(key: string, host: Host, argv: readonly string[], env?: Readonly<Record<string, string>>): void;
  stop(key: string): Promise<void>;
  listening(host: Host, port: number): Promise<void>;
  /** Asks for a lease anew; what the client printed. */
  dhcp(host: 'computer' | 'phone' | 'twin'): Promise<Ran>;
  /** The name servers of a host, written in place. */
  resolv(host: Host, ...servers: readonly string[]): void;
  phoneTo(network: PhoneNetwork): Promise<void>;
  /** Changes what the carrier gives its phones, until restored; `ipv4` in a healthy site. */
  carrier(gives: Carried): Promise<void>;
  /** The camera's address, mask, gateway and name servers, as set on its page; what its system refuses is left unset. */
  cameraNetwork(): Promise<string>;
  /** The camera's own status page as text (as a person at it reads it), or undefined where the page does not open from `from`. */
  cameraPage(from: 'computer' | 'phone'): Promise<string | undefined>;
  /** Opens the app for the camera's live picture. */
  app(phone: 'phone' | 'mobile'): Promise<AppScreen>;
  /** A light at a socket: link or none. */
  light(port: Port): Promise<'lit' | 'dark'>;
  /** Power-cycles a device, as a person pulling its plug would. */
  restart(device: 'camera' | 'router' | 'box' | 'phone' | 'switch'): Promise<void>;
  /** Waits until the camera has tried to register since this call; false where it can't reach the service. */
  cameraFresh(): Promise<boolean>;
  defer(undo: () => Promise<void>): void;
  /** Undoes what was deferred, last first; empties connection tracking and neighbours; polls until healthy. */
  restore(): Promise<void>;
  /** Every command run since the last call, for the log. */
  takeLog(): readonly Ran[];
}

/** One thing wrong with the site, produced for real. */
export interface Fault {
  readonly id: string;
  /** The cause of the rule base that it is. Alternatives where packets can't tell two names of one thing apart. */
  readonly causes: readonly string[];
  readonly title: string;
  inject(lab: Lab): Promise<Injected>;
}

export interface Injected {
  readonly story: Story;
  /** Remedies of the rule base that mend it in this world, and only they. */
  readonly mends: readonly string[];
  /** Undoes it, as that remedy would. */
  mend(): Promise<void>;
  /** What a person sees that no packet shows (a padlock on the app, a notice): question id to answer, few. */
  readonly plain?: Readonly<Record<string, string | boolean>>;
}

/** What somebody on site did to answer one question: the commands, and the answer, or that they can't tell. */
export interface Look {
  readonly ran: readonly Ran[];
  readonly answer:
    | { readonly kind: 'value'; readonly value: string | boolean | number | readonly string[] }
    | { readonly kind: 'paste'; readonly text: string; readonly from: 'this-computer' | 'phone' | 'camera' }
    | { readonly kind: 'cant-tell' };
}

/** A question as `whydark questions --json` prints it. */
export interface AskedQuestion {
  readonly id: string;
  readonly prompt: string;
  readonly help?: string;
  readonly answer: {
    readonly type: string;
    readonly choices?: readonly { readonly id: string; readonly title: string }[];
  };
  readonly place: string;
  readonly who: string;
}
