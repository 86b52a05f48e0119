import type { Parser } from '../../../src/intake/parser.js';
import { ipconfig } from '../../../src/intake/parsers/ipconfig.js';
import { windowsArp } from '../../../src/intake/parsers/windows-arp.js';
import { windowsPing } from '../../../src/intake/parsers/windows-ping.js';

/** The parsers of the commands that callers are asked for first, in the order in which they should stand. */
export const FIRST_COMMANDS: readonly Parser[] = [ipconfig, windowsPing, windowsArp];
