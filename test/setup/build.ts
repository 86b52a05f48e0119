import { execFileSync } from 'node:child_process';

/** The tests run the built command, so it has to be the one of these sources. */
export function setup(): void {
  execFileSync('npm', ['run', '--silent', 'build'], { stdio: ['ignore', 'ignore', 'inherit'] });
}
