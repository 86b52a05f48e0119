import { spawnSync } from 'node:child_process';
import type { Lab } from '../types.js';

/** Namespaces that these labs should have taken down with them, and processes that still run in one: there must be none. */
export function leftovers(labs: readonly Lab[]): readonly string[] {
  const names = spawnSync('ip', ['netns', 'list'], { encoding: 'utf8' }).stdout.split(/\s+/);
  const own = names.filter((name) => labs.some(({ id }) => name.startsWith(`${id}-`)));
  const running = spawnSync('ps', ['-eo', 'args'], { encoding: 'utf8' }).stdout.split('\n');
  return [...own, ...running.filter((line) => labs.some(({ id }) => line.includes(`/whydark-lab/${id}/`)))];
}
