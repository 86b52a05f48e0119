import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lab } from '../types.js';
import type { Undo } from './fault.js';
import { homeOf } from './homes.js';

/** Changes what the router hands out, and forgets its leases. Undoing puts the old page back. */
export async function handOut(lab: Lab, change: (page: string) => string): Promise<Undo> {
  const file = join(homeOf(lab, 'router'), 'dhcp.conf');
  const before = readFileSync(file, 'utf8');
  const start = async (page: string) => {
    await lab.stop('router-dhcp');
    writeFileSync(file, page);
    rmSync(join(homeOf(lab, 'router'), 'leases'), { force: true });
    lab.daemon('router-dhcp', 'router', ['dnsmasq', '-k', '-C', file]);
    await served(lab);
  };
  await start(change(before));
  return () => start(before);
}

/** The site's range of addresses, from and to. */
export function range(page: string, from: string, to: string): string {
  return page.replace(/^dhcp-range=set:site,.*$/m, `dhcp-range=set:site,${from},${to},255.255.255.0,1h`);
}

/** The camera's line in the lab's clean state is static; this is what a camera that got no answer gives itself. */
export const SELF_GIVEN = {
  address: '169.254.77.21/16',
  gateway: undefined,
  dns: [] as readonly string[],
} as const;

async function served(lab: Lab): Promise<void> {
  for (let tries = 0; tries < 40; tries += 1) {
    const { stdout } = await lab.run('router', ['ss', '-Huln', 'sport = :67']);
    if (stdout.trim() !== '') return;
  }
  throw new Error('the router hands out no addresses');
}
