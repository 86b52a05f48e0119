import { understood } from '../call/understood.js';
import { type Command, typed } from '../here/commands.js';
import type { Discovered, Search } from '../here/discovery/discover.js';
import { foundCameras } from '../here/discovery/found-cameras.js';
import { gather } from '../here/gather.js';
import type { Machine } from '../here/machine.js';
import type { Prober } from '../here/prober.js';
import { describe, probesFor, runProbes } from '../here/probes.js';
import { resultLines } from '../here/result-lines.js';
import { type Paste, readPaste } from '../intake/paste.js';
import type { Adapter } from '../intake/seen.js';
import { withTried } from '../intake/with-tried.js';
import { inWords, say } from '../messages/say.js';
import type { Address } from '../values/address.js';

/** What somebody has to agree to, each by itself. */
export type Consent = 'read' | 'try' | 'search';

/** How this computer is looked at; tests answer in its place. */
export interface Eyes {
  readonly commands: readonly Command[];
  readonly machine: Machine;
  readonly prober: Prober;
  readonly search: (search: Search) => Promise<Discovered>;
}

export interface LookDesk {
  /** Whether somebody can agree to it here. What can't be agreed to is not spoken of. */
  readonly offers: (to: Consent) => boolean;
  readonly agrees: (to: Consent) => Promise<boolean>;
  /** Asks for the camera's address, where the call does not know it. */
  readonly camera: () => Promise<Address | undefined>;
  /** Lines; those that begin with two blanks hang under the one before. */
  readonly tell: (lines: readonly string[]) => void;
}

/** What is known before. */
export interface Known {
  readonly camera?: Address | undefined;
  readonly router?: Address | undefined;
  /** A name to look up, as of the maker's service. */
  readonly name?: string | undefined;
}

/** What was found, and the camera's address where a person gave it. */
export interface Looked {
  readonly paste: Paste;
  readonly given?: Address;
}

/**
 * Reads this computer, and with a second and a third consent tries the camera and the router and calls for cameras.
 * Each time what would be done is said first. Undefined where nobody agreed, or nothing could be read.
 */
export async function lookHere(eyes: Eyes, desk: LookDesk, known: Known): Promise<Looked | undefined> {
  const read = await readHere(eyes, desk, known.camera);
  if (read === undefined) return undefined;
  const told = known.camera ?? onlyCamera(read);
  const asked = told === undefined ? await desk.camera() : undefined;
  const camera = told ?? asked;
  const paste = known.camera === undefined && camera !== undefined ? readPaste(read.text, camera) : read;
  const tried = await tryFrom(eyes, desk, paste, { ...known, camera });
  const answered = tried.reading.seen.pings.some(
    ({ address, received }) => received > 0 && address?.bits === camera?.bits,
  );
  const done = answered && camera !== undefined ? tried : await searchFrom(eyes, desk, tried);
  const given = known.camera ?? asked;
  return { paste: done, ...(given === undefined ? {} : { given }) };
}

async function readHere(
  { commands, machine }: Eyes,
  { tell, agrees }: LookDesk,
  camera: Address | undefined,
): Promise<Paste | undefined> {
  if (commands.length === 0) {
    tell([say('here.unknown-system')]);
    return undefined;
  }
  const plan = commands.map(({ argv, why }) =>
    say('here.plan-one', { command: typed(argv), why: inWords(why) }),
  );
  tell([say('here.plan'), ...hanging(plan)]);
  if (!(await agrees('read'))) return undefined;
  const { text, missed } = await gather(commands, machine);
  const paste = readPaste(text, camera);
  const has = text !== '';
  tell([...missed.map(inWords), ...(has ? understood(paste) : [say('here.nothing-read')])]);
  return has ? paste : undefined;
}

async function tryFrom(
  eyes: Eyes,
  { tell, agrees, offers }: LookDesk,
  paste: Paste,
  known: Known,
): Promise<Paste> {
  const way = adapterOf(paste);
  const probes = probesFor({ ...known, router: known.router ?? way?.gateways[0]?.value });
  if (probes.length === 0 || !offers('try')) return paste;
  tell([say('here.plan-try'), ...hanging(probes.map((probe) => inWords(describe(probe))))]);
  if (probes.every(({ kind }) => kind === 'refused') || !(await agrees('try'))) return paste;
  tell([say('here.trying')]);
  const probed = await runProbes(probes, eyes.prober);
  const words = resultLines(probes, probed);
  tell([say('here.tried'), ...hanging(words)]);
  return withTried(paste, { ...probed, words });
}

async function searchFrom(eyes: Eyes, { tell, agrees, offers }: LookDesk, paste: Paste): Promise<Paste> {
  const own = paste.reading.seen.adapters
    .filter(({ owner }) => owner === 'computer')
    .flatMap(({ addresses }) => addresses)
    .flatMap(({ address, mask }) => (mask === undefined ? [] : [{ address, mask }]));
  const local = adapterOf(paste)?.addresses[0]?.address;
  if (local === undefined || !offers('search')) return paste;
  tell([say('here.plan-search')]);
  if (!(await agrees('search'))) return paste;
  tell([say('here.searching')]);
  const { found, missed } = await eyes.search({ local, own });
  const { words, adapters } = foundCameras(found, own);
  tell([
    ...(missed === undefined ? [] : [inWords(missed)]),
    ...(words.length === 0 && missed === undefined ? [say('here.found-none')] : words),
  ]);
  return withTried(paste, { words, adapters });
}

function adapterOf({ way, reading }: Paste): Adapter | undefined {
  return way.adapter === undefined ? undefined : reading.seen.adapters[way.adapter];
}

function onlyCamera({ reading: { seen } }: Paste): Address | undefined {
  const cameras = seen.adapters.filter(({ owner }) => owner === 'camera');
  return cameras.length === 1 ? cameras[0]?.addresses[0]?.address : undefined;
}

function hanging(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}
