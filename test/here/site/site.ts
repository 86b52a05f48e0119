import { type ChildProcess, execFile, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';
import { build } from 'rolldown';

/** Two namespaces joined by a lead: a computer in the first, a camera in the second. Nothing leaves them. */
const COMPUTER = `whydark-computer-${process.pid}`;
const CAMERA = `whydark-camera-${process.pid}`;

const SET_UP = [
  `ip netns add ${COMPUTER}`,
  `ip netns add ${CAMERA}`,
  `ip -n ${COMPUTER} link set lo up`,
  `ip -n ${COMPUTER} link add eth0 address 02:00:5e:10:00:05 type veth peer name eth0 netns ${CAMERA}`,
  `ip -n ${CAMERA} link set eth0 address 02:00:5e:10:00:57 up`,
  `ip -n ${CAMERA} addr add 172.23.40.57/24 dev eth0`,
  `ip -n ${CAMERA} addr add 10.77.5.20/24 dev eth0`,
  `ip -n ${CAMERA} addr add 203.0.113.9/24 dev eth0`,
  `ip -n ${COMPUTER} link set eth0 up`,
  `ip -n ${COMPUTER} addr add 172.23.40.5/24 dev eth0`,
  // Otherwise the system itself would drop what comes from there.
  `ip -n ${COMPUTER} route add 10.77.5.0/24 dev eth0`,
  `ip -n ${COMPUTER} route add 203.0.113.0/24 dev eth0`,
];

function run(command: string): void {
  const [program = '', ...words] = command.split(' ');
  execFileSync(program, words, { stdio: 'pipe' });
}

/** Why there can be no such site; empty where there can. */
export function whyNoSite(): string {
  if (process.platform !== 'linux' || process.getuid?.() !== 0)
    return 'not root on Linux, so no network namespaces';
  try {
    run('python3 --version');
    run(`ip netns add ${COMPUTER}`);
    return '';
  } catch {
    return 'no python3, or no ip command that makes network namespaces';
  } finally {
    takeDown();
  }
}

/** Takes both away again, by their names and no others, with what was started in them. */
export function takeDown(): void {
  for (const child of started.splice(0)) child.kill('SIGKILL');
  for (const name of [COMPUTER, CAMERA])
    if (existsSync(`/var/run/netns/${name}`)) run(`ip netns del ${name}`);
}

export function setUp(): void {
  try {
    for (const command of SET_UP) run(command);
  } catch (cause) {
    takeDown();
    throw cause;
  }
}

const started: ChildProcess[] = [];

/** Starts a script beside the camera, and gives the lines it prints once it is ready. */
export async function atTheCamera(script: string, ...words: readonly string[]): Promise<readonly string[]> {
  const path = join(import.meta.dirname, script);
  const child = spawn('ip', ['netns', 'exec', CAMERA, 'python3', path, ...words], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  started.push(child);
  const lines: string[] = [];
  const reader = createInterface({ input: child.stdout });
  await once(reader, 'line', { signal: AbortSignal.timeout(10_000) });
  reader.on('line', (line) => lines.push(line));
  return lines;
}

/** Sets something on the computer, as an `ip` command without its first words. */
export function onComputer(words: string): void {
  run(`ip -n ${COMPUTER} ${words}`);
}

/** Runs a command on the computer, and gives what it printed. */
export function fromComputer(file: string, words: readonly string[]): string {
  return execFileSync('ip', ['netns', 'exec', COMPUTER, file, ...words], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: 30_000,
  });
}

/** What the program sees from the computer. */
export async function atTheComputer(folder: string, ...words: readonly string[]): Promise<unknown> {
  const file = join(folder, 'look.mjs');
  if (!existsSync(file)) await bundle(file);
  const { stdout } = await promisify(execFile)('ip', [
    'netns',
    'exec',
    COMPUTER,
    process.execPath,
    file,
    ...words,
  ]);
  return JSON.parse(stdout);
}

async function bundle(file: string): Promise<void> {
  await build({
    input: join(import.meta.dirname, 'look.ts'),
    platform: 'node',
    logLevel: 'warn',
    resolve: { extensionAlias: { '.js': ['.ts', '.js'] } },
    output: { file, format: 'esm', codeSplitting: false },
  });
}
