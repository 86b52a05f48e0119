import { givenAddress } from '../../call/given-address.js';
import { noticed } from '../../call/noticed.js';
import { nextForComputer } from '../../call/own-computer.js';
import { InputFault } from '../../files/faults.js';
import type { Paste } from '../../intake/paste.js';
import { plain } from '../../intake/plain-seen.js';
import { printable } from '../../messages/printable.js';
import { inWords } from '../../messages/say.js';
import { askOn, type Terminal } from '../ask.js';
import { eyesHere } from '../eyes-here.js';
import { foundText } from '../found-text.js';
import { deskOn, type HereDesk } from '../here-desk.js';
import { type Consent, type Known, type Looked, lookHere } from '../look-here.js';
import type { Options } from '../options.js';
import { paintFor } from '../paint.js';
import { EXIT } from '../run.js';

/** Options that only this command has. */
export const HERE_INPUTS = ['agree', 'camera', 'router', 'name'] as const;

const CONSENTS = ['read', 'try', 'search'] as const satisfies readonly Consent[];

/** `whydark here`: reads this computer after asking, and says what to do next. */
export async function here(options: Options): Promise<number> {
  const [extra] = options.operands;
  if (extra !== undefined) throw new InputFault({ id: 'cli.too-many', with: { command: 'here', extra } });
  const { given, json } = options;
  const agreed = given.agree === undefined ? undefined : consentsIn(given.agree);
  const canAsk = process.stdin.isTTY === true && process.stderr.isTTY === true;
  if (agreed === undefined && !canAsk) throw new InputFault({ id: 'here.no-terminal' });
  const known: Known = {
    camera: addressIn(given, 'camera'),
    router: addressIn(given, 'router'),
    name: given.name,
  };
  const terminal: Terminal = {
    input: process.stdin,
    output: process.stderr,
    paint: paintFor(process.stderr, process.env),
  };
  const desk = agreed === undefined ? deskOn(terminal, askOn(terminal)) : silentDesk(agreed, json);
  try {
    const looked = await lookHere(eyesHere(), desk, known);
    if (looked === undefined) return EXIT.done;
    const { paste } = looked;
    const shown = json
      ? JSON.stringify(told(paste), null, 2)
      : foundText([nextForComputer(paste)], process.stdout.columns);
    process.stdout.write(`${shown}\n`);
    return agreed === undefined && !json ? await goOn(options, terminal, desk, looked) : EXIT.done;
  } catch (error) {
    if (!(error instanceof Error) || error.name !== 'ExitPromptError') throw error;
    return EXIT.interrupted;
  }
}

/** Whoever agreed beforehand is shown the same, on stderr beside JSON. */
function silentDesk(agreed: ReadonlySet<Consent>, json: boolean): HereDesk {
  const out = json ? process.stderr : process.stdout;
  return {
    offers: (to) => agreed.has(to),
    agrees: async (to) => agreed.has(to),
    camera: async () => undefined,
    tell: (lines) => out.write(`${foundText(lines, out.columns)}\n`),
    wants: async () => false,
  };
}

async function goOn(options: Options, terminal: Terminal, desk: HereDesk, looked: Looked): Promise<number> {
  if (!(await desk.wants('call'))) return EXIT.done;
  // Loaded when wanted: only a call needs the rule base.
  const { holdHere } = await import('../hold-here.js');
  return holdHere(options, terminal, looked);
}

function consentsIn(text: string): ReadonlySet<Consent> {
  const words = text.split(',').map((word) => word.trim());
  const consents = words.map((word) => {
    const consent = CONSENTS.find((one) => one === word);
    if (consent === undefined)
      throw new InputFault({ id: 'here.agree-what', with: { word: printable(word, 60) } });
    return consent;
  });
  return new Set(consents);
}

function addressIn(given: Options['given'], option: 'camera' | 'router'): Known['camera'] {
  const parsed = givenAddress(given[option] ?? '');
  if (parsed.ok) return parsed.value;
  throw new InputFault({ id: 'here.bad-address', with: { option, problem: inWords(parsed.problem) } });
}

function told(paste: Paste): unknown {
  const { reading, way, dropped } = paste;
  return {
    format: 1,
    seen: plain(reading.seen),
    way,
    noticed: noticed(reading.seen),
    next: nextForComputer(paste),
    dropped,
  };
}
