import type { Parser } from '../../../src/intake/parser.js';
import { netIpConfiguration } from '../../../src/intake/parsers/net-ip-configuration.js';
import { netshConfig } from '../../../src/intake/parsers/netsh-config.js';
import { routePrint } from '../../../src/intake/parsers/route-print.js';
import { testNetConnection } from '../../../src/intake/parsers/test-net-connection.js';
import { tracert } from '../../../src/intake/parsers/tracert.js';
import { windowsNslookup } from '../../../src/intake/parsers/windows-nslookup.js';
import { windowsPrompt } from '../../../src/intake/parsers/windows-prompt.js';

/** The parsers of the further commands of Windows, in the order in which they should stand. */
export const FURTHER_COMMANDS: readonly Parser[] = [
  tracert,
  windowsNslookup,
  routePrint,
  netshConfig,
  testNetConnection,
  netIpConfiguration,
  windowsPrompt,
];
