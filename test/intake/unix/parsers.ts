import type { Parser } from '../../../src/intake/parser.js';
import { arpTable } from '../../../src/intake/parsers/arp-table.js';
import { arping } from '../../../src/intake/parsers/arping.js';
import { bsdRoutes } from '../../../src/intake/parsers/bsd-routes.js';
import { curl } from '../../../src/intake/parsers/curl.js';
import { dig } from '../../../src/intake/parsers/dig.js';
import { ethtool } from '../../../src/intake/parsers/ethtool.js';
import { host } from '../../../src/intake/parsers/host.js';
import { ifconfig } from '../../../src/intake/parsers/ifconfig.js';
import { ipAddress } from '../../../src/intake/parsers/ip-address.js';
import { ipBrief } from '../../../src/intake/parsers/ip-brief.js';
import { ipJson } from '../../../src/intake/parsers/ip-json.js';
import { ipNeighbour } from '../../../src/intake/parsers/ip-neighbour.js';
import { ipRoute } from '../../../src/intake/parsers/ip-route.js';
import { linuxRoutes } from '../../../src/intake/parsers/linux-routes.js';
import { mtr } from '../../../src/intake/parsers/mtr.js';
import { netcat } from '../../../src/intake/parsers/netcat.js';
import { nmcli } from '../../../src/intake/parsers/nmcli.js';
import { resolvConf } from '../../../src/intake/parsers/resolv-conf.js';
import { resolvectl } from '../../../src/intake/parsers/resolvectl.js';
import { routeGet } from '../../../src/intake/parsers/route-get.js';
import { scutilDns } from '../../../src/intake/parsers/scutil-dns.js';
import { shellPrompt } from '../../../src/intake/parsers/shell-prompt.js';
import { tracepath } from '../../../src/intake/parsers/tracepath.js';
import { traceroute } from '../../../src/intake/parsers/traceroute.js';
import { unixArp } from '../../../src/intake/parsers/unix-arp.js';
import { unixNslookup } from '../../../src/intake/parsers/unix-nslookup.js';
import { unixPing } from '../../../src/intake/parsers/unix-ping.js';

/** The parsers of what Linux, macOS and the BSDs print. */
export const UNIX: readonly Parser[] = [
  ipAddress,
  ipBrief,
  ipRoute,
  ipNeighbour,
  ipJson,
  ifconfig,
  unixPing,
  unixArp,
  arpTable,
  linuxRoutes,
  bsdRoutes,
  routeGet,
  traceroute,
  tracepath,
  mtr,
  nmcli,
  resolvectl,
  resolvConf,
  scutilDns,
  dig,
  host,
  unixNslookup,
  arping,
  ethtool,
  netcat,
  curl,
  shellPrompt,
];
