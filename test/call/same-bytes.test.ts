import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { heldCalls, run } from '../cli/built.js';
import { temporaryFolder } from '../files/temporary.js';

const records = await heldCalls(temporaryFolder());

// Kiritimati is 14 hours ahead of UTC, Marquesas 9.5 behind; Turkish upper and lower case of i differ from ours.
const ELSEWHERE: readonly NodeJS.ProcessEnv[] = [
  { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8' },
  { TZ: 'Pacific/Marquesas', LC_ALL: 'de_DE.UTF-8' },
];

function output(words: readonly string[], env: NodeJS.ProcessEnv): string {
  const { stdout, stderr, status } = run(words, { env });
  if (status !== 0) throw new Error(stderr);
  return stdout;
}

describe('the same record', () => {
  it('is one of several', () => {
    expect(records.length).toBeGreaterThanOrEqual(3);
  });

  it.each(records.slice(0, 4).map((record, at) => [basename(record), record, ELSEWHERE[at % 2]] as const))(
    'gives the same bytes on a second run, in another time zone and language: %s',
    (_, record, env = {}) => {
      for (const words of [
        ['replay', record, '--json'],
        ['ticket', record],
      ]) {
        const first = output(words, { TZ: 'UTC', LC_ALL: 'C' });
        expect(first.length).toBeGreaterThan(500);
        expect(output(words, env)).toBe(first);
      }
    },
  );
});
