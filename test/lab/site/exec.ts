import { spawn } from 'node:child_process';

/** What a command gave. `code` is null where it was ended by a signal. */
export interface Given {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
  readonly ms: number;
  readonly timedOut: boolean;
}

export interface Terms {
  readonly timeoutMs?: number;
  readonly cwd?: string;
  readonly input?: string;
}

/** Runs a command to its end or to the time-out (ms), then ends its whole process group. Never throws. */
export function given(argv: readonly string[], terms: Terms = {}): Promise<Given> {
  const [file = 'false', ...rest] = argv;
  const started = performance.now();
  return new Promise((resolve) => {
    let stdout = '';
    let stderr = '';
    let timedOut = false;
    const child = spawn(file, rest, { cwd: terms.cwd, detached: true, stdio: ['pipe', 'pipe', 'pipe'] });
    const end = (code: number | null) => {
      clearTimeout(timer);
      resolve({ code, stdout, stderr, ms: Math.round(performance.now() - started), timedOut });
    };
    const timer = setTimeout(() => {
      timedOut = true;
      killGroup(child.pid, 'SIGKILL');
    }, terms.timeoutMs ?? 8000);
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      stderr += text;
    });
    child.on('error', (error) => {
      stderr += error.message;
      end(127);
    });
    child.on('close', end);
    child.stdin.on('error', () => {});
    child.stdin.end(terms.input ?? '');
  });
}

/** As `given`, and throws with what was printed where the command fails. */
export async function must(argv: readonly string[], terms: Terms = {}): Promise<Given> {
  const got = await given(argv, terms);
  if (got.code !== 0) throw new Error(`${argv.join(' ')}: ${got.stderr || got.stdout || got.code}`);
  return got;
}

/** Signals a process group; one that is gone is no error. */
export function killGroup(pid: number | undefined, signal: NodeJS.Signals): void {
  if (pid === undefined) return;
  try {
    process.kill(-pid, signal);
  } catch {
    // It has ended.
  }
}

export const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
