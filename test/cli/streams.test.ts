import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { guardOutput } from '../../src/cli/streams.js';
import { COMMAND } from './built.js';

function shell(script: string): {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
} {
  return spawnSync('/bin/sh', ['-c', script], {
    encoding: 'utf8',
    timeout: 20_000,
    env: { PATH: process.env.PATH },
  });
}

const QUESTIONS = `'${process.execPath}' ${COMMAND} questions`;

describe.skipIf(process.platform === 'win32')('what is written', () => {
  it.each(['head -n 1', 'true'])('to somebody who reads no further (| %s) ends without a fault', (reader) => {
    const { stderr, stdout } = shell(`{ ${QUESTIONS}; echo "status $?" >&2; } | ${reader}`);
    expect(stderr).toBe('status 0\n');
    expect(stdout.split('\n').length).toBeLessThanOrEqual(2);
  });

  it.skipIf(!existsSync('/dev/full'))('to a full disk is told in one sentence, and ends with 3', () => {
    const { status, stderr } = shell(`${QUESTIONS} > /dev/full`);
    expect(status).toBe(3);
    expect(stderr).toMatch(/^The results could not be written where they were sent\. .*ENOSPC.*\n$/);
  });

  it('goes to stdout as results, to stderr as talk', () => {
    const refused = shell(`'${process.execPath}' ${COMMAND} call < /dev/null`);
    expect([refused.status, refused.stdout]).toEqual([2, '']);
    const listed = shell(QUESTIONS);
    expect([listed.status, listed.stderr]).toEqual([0, '']);
  });
});

describe('a guarded stream', () => {
  const failing = (code: string): Writable =>
    new Writable({ write: (_chunk, _encoding, done) => done(Object.assign(new Error('no'), { code })) });
  const told = async (code: string): Promise<readonly string[]> => {
    const reasons: string[] = [];
    const stream = failing(code);
    guardOutput(stream, (reason) => reasons.push(reason));
    stream.write('x');
    await new Promise((resolve) => setImmediate(resolve));
    return reasons;
  };

  it('says nothing where nobody reads on, and the reason of anything else', async () => {
    expect(await told('EPIPE')).toEqual([]);
    expect(await told('ENOSPC')).toEqual(['ENOSPC']);
    expect(await told('EIO')).toEqual(['EIO']);
  });
});
