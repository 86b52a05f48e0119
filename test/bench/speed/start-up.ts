import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';

/** Ratios to an empty run of Node on the same machine in the same run; `undefined` where they can't be measured. */
export interface StartUp {
  readonly version: number;
  readonly firstQuestion: number | undefined;
}

const RUNS = 15;

/** How long the built command takes to start, against `node -e 0`; medians of runs that take turns. */
export async function startUp(command: string): Promise<StartUp> {
  const version: number[] = [];
  const empty: number[] = [];
  const question: number[] = [];
  const said: number[] = [];
  const hasScript = spawnSync('script', ['--version']).status === 0;
  for (let run = 0; run < RUNS; run++) {
    empty.push(timeOf(['-e', '0']));
    version.push(timeOf([command, '--version']));
    if (!hasScript) continue;
    said.push(await timeUntil(`${process.execPath} -e 'console.log(\`Question 1\`)'`));
    question.push(await firstQuestion(command));
  }
  const ratio = (a: readonly number[], b: readonly number[]) => median(a) / median(b);
  return {
    version: ratio(version, empty),
    firstQuestion: hasScript ? ratio(question, said) : undefined,
  };
}

function timeOf(words: readonly string[]): number {
  const begun = performance.now();
  spawnSync(process.execPath, [...words]);
  return performance.now() - begun;
}

async function firstQuestion(command: string): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-bench-'));
  try {
    return await timeUntil(`${process.execPath} ${command} call --record ${join(folder, 'call.jsonl')}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Milliseconds until a command on a terminal of its own says "Question 1". */
function timeUntil(line: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const begun = performance.now();
    const child = spawn('script', ['-qec', line, '/dev/null'], { stdio: ['pipe', 'pipe', 'ignore'] });
    let seen = '';
    const late = setTimeout(() => {
      child.kill('SIGKILL');
      reject(new Error(`no question came of ${line}: ${seen}`));
    }, 20_000);
    child.stdout.on('data', (data: Buffer) => {
      seen += data.toString();
      if (!seen.includes('Question 1')) return;
      clearTimeout(late);
      child.kill('SIGKILL');
      resolve(performance.now() - begun);
    });
  });
}

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
