import type { Parser } from './parser.js';
import { arpTable } from './parsers/arp-table.js';
import { arping } from './parsers/arping.js';
import { bsdRoutes } from './parsers/bsd-routes.js';
import { curl } from './parsers/curl.js';
import { dig } from './parsers/dig.js';
import { ethtool } from './parsers/ethtool.js';
import { host } from './parsers/host.js';
import { ifconfig } from './parsers/ifconfig.js';
import { ipAddress } from './parsers/ip-address.js';
import { ipBrief } from './parsers/ip-brief.js';
import { ipJson } from './parsers/ip-json.js';
import { ipNeighbour } from './parsers/ip-neighbour.js';
import { ipRoute } from './parsers/ip-route.js';
import { ipconfig } from './parsers/ipconfig.js';
import { linuxRoutes } from './parsers/linux-routes.js';
import { mtr } from './parsers/mtr.js';
import { netIpConfiguration } from './parsers/net-ip-configuration.js';
import { netcat } from './parsers/netcat.js';
import { netshConfig } from './parsers/netsh-config.js';
import { nmcli } from './parsers/nmcli.js';
import { resolvConf } from './parsers/resolv-conf.js';
import { resolvectl } from './parsers/resolvectl.js';
import { retyped } from './parsers/retyped.js';
import { routeGet } from './parsers/route-get.js';
import { routePrint } from './parsers/route-print.js';
import { scutilDns } from './parsers/scutil-dns.js';
import { shellPrompt } from './parsers/shell-prompt.js';
import { testNetConnection } from './parsers/test-net-connection.js';
import { tracepath } from './parsers/tracepath.js';
import { traceroute } from './parsers/traceroute.js';
import { tracert } from './parsers/tracert.js';
import { unixArp } from './parsers/unix-arp.js';
import { unixNslookup } from './parsers/unix-nslookup.js';
import { unixPing } from './parsers/unix-ping.js';
import { windowsArp } from './parsers/windows-arp.js';
import { windowsNslookup } from './parsers/windows-nslookup.js';
import { windowsPing } from './parsers/windows-ping.js';
import { windowsPrompt } from './parsers/windows-prompt.js';

/**
 * All parsers. Of two that claim the same line the first wins: the narrower format stands before the wider one, prompts
 * come behind every format, and what people retype comes last.
 */
export const PARSERS: readonly Parser[] = [
  ipconfig,
  windowsPing,
  windowsArp,
  tracert,
  windowsNslookup,
  routePrint,
  netshConfig,
  testNetConnection,
  netIpConfiguration,
  ipJson,
  ipBrief,
  ipAddress,
  ipNeighbour,
  ipRoute,
  ifconfig,
  unixPing,
  arpTable,
  unixArp,
  arping,
  routeGet,
  linuxRoutes,
  bsdRoutes,
  tracepath,
  traceroute,
  mtr,
  nmcli,
  resolvectl,
  resolvConf,
  scutilDns,
  dig,
  host,
  unixNslookup,
  ethtool,
  curl,
  netcat,
  windowsPrompt,
  shellPrompt,
  retyped,
];
