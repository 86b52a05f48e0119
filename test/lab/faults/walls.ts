import type { Host, Lab } from '../types.js';
import type { Undo } from './fault.js';

let walls = 0;

/** Holds packets back that a host passes on. Each line is a rule of nftables up to its verdict, or with one. */
export function forwardWall(lab: Lab, host: Host, ...lines: readonly string[]): Promise<Undo> {
  return wall(lab, host, 'inet', 'type filter hook forward priority -20; policy accept;', lines);
}

/** Holds packets back that a host would take for itself. */
export function inputWall(lab: Lab, host: Host, ...lines: readonly string[]): Promise<Undo> {
  return wall(lab, host, 'inet', 'type filter hook input priority -20; policy accept;', lines);
}

/** Holds packets back that a host sends. */
export function outputWall(lab: Lab, host: Host, ...lines: readonly string[]): Promise<Undo> {
  return wall(lab, host, 'inet', 'type filter hook output priority -20; policy accept;', lines);
}

/** Holds frames back that the switch passes on. */
export function switchWall(lab: Lab, ...lines: readonly string[]): Promise<Undo> {
  return wall(lab, 'switch', 'bridge', 'type filter hook forward priority -20; policy accept;', lines);
}

/** Sends packets elsewhere before they are routed. */
export function turnAway(lab: Lab, host: Host, ...lines: readonly string[]): Promise<Undo> {
  return wall(lab, host, 'ip', 'type nat hook prerouting priority -110; policy accept;', lines);
}

/** Loses a share of the frames of an interface, both ways: percent from 1 to 100. */
export async function lossy(lab: Lab, host: Host, device: string, percent: number): Promise<Undo> {
  const name = nextName();
  const share = percent >= 100 ? '' : `numgen random mod 100 < ${percent} `;
  const chain = (hook: string) =>
    `chain ${hook} { type filter hook ${hook} device "${device}" priority 0; policy accept;\n${share}drop\n}\n`;
  await lab.nft(host, `table netdev ${name} {\n${chain('ingress')}${chain('egress')}}\n`);
  return () => lab.nft(host, `delete table netdev ${name}\n`);
}

/** Sends no faster than this: kilobits a second, with a queue of so many milliseconds. */
export async function slow(
  lab: Lab,
  host: Host,
  device: string,
  kbits: number,
  queueMs = 600,
): Promise<Undo> {
  await must(
    lab,
    host,
    `qdisc replace dev ${device} root tbf rate ${kbits}kbit burst 8k latency ${queueMs}ms`,
  );
  return async () => {
    await lab.run(host, ['tc', 'qdisc', 'del', 'dev', device, 'root']);
  };
}

/** Pulls a lead out at a socket, or switches an interface off. */
export async function linkDown(lab: Lab, host: Host, device: string): Promise<Undo> {
  await lab.ip(host, `link set ${device} down\n`);
  return () => lab.ip(host, `link set ${device} up\n`);
}

async function wall(
  lab: Lab,
  host: Host,
  family: string,
  hook: string,
  lines: readonly string[],
): Promise<Undo> {
  const name = nextName();
  await lab.nft(host, `table ${family} ${name} {\nchain one {\n${hook}\n${lines.join('\n')}\n}\n}\n`);
  return () => lab.nft(host, `delete table ${family} ${name}\n`);
}

async function must(lab: Lab, host: Host, words: string): Promise<void> {
  const { code, stderr } = await lab.run(host, ['tc', ...words.split(' ')]);
  if (code !== 0) throw new Error(`tc on ${host}: ${stderr}`);
}

function nextName(): string {
  walls += 1;
  return `wall${walls}`;
}
