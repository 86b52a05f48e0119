import { spawnSync } from 'node:child_process';
import process from 'node:process';

/** Peak memory in MiB of a whole call replayed by the built command, and of Node doing nothing. */
export interface Memory {
  readonly call: number;
  readonly empty: number;
}

/** Says on leaving what was the most it held: Linux's high-water mark of the process, which no parent adds to. */
const TELLING = `data:text/javascript,${encodeURIComponent(
  'import{readFileSync}from"node:fs";process.on("exit",()=>process.stderr.write("\\n"+/VmHWM.*/.exec(readFileSync("/proc/self/status","utf8"))))',
)}`;

/** Measures both in processes of their own; `undefined` anywhere but on Linux. Throws where the record can't be replayed. */
export function peakMemory(command: string, record: string): Memory | undefined {
  if (process.platform !== 'linux') return undefined;
  return { call: peakOf([command, 'replay', record]), empty: peakOf(['-e', '0']) };
}

function peakOf(words: readonly string[]): number {
  const { stderr, status } = spawnSync(process.execPath, ['--import', TELLING, ...words], {
    encoding: 'utf8',
  });
  const peak = /VmHWM:\s+(\d+) kB/.exec(stderr)?.[1];
  if (status !== 0 || peak === undefined) throw new Error(`${words.join(' ')}: ${stderr}`);
  return Math.round(Number(peak) / 1024);
}
