import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../files/temporary.js';
import { COMMAND } from './built.js';

const folder = temporaryFolder();
const socket = join(folder, 'socket');
const tmux = (...words: readonly string[]): string =>
  spawnSync('tmux', ['-S', socket, '-f', '/dev/null', ...words], { encoding: 'utf8' }).stdout ?? '';
const hasTmux = spawnSync('tmux', ['-V']).status === 0;

/** What stands on the screen once it holds these words; fails where they never come. */
async function screenWith(words: string): Promise<string> {
  for (let tries = 0; tries < 100; tries++) {
    const screen = tmux('capture-pane', '-p', '-t', 'call');
    if (screen.includes(words)) return screen;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`"${words}" never came; there stands:\n${tmux('capture-pane', '-p', '-t', 'call')}`);
}

const record = join(folder, 'call.jsonl');
const ticket = join(folder, 'ticket.md');
const begin = (): void => {
  const line = `'${process.execPath}' ${COMMAND} call --record ${record} > ${ticket}; echo "status $?"; sleep 60`;
  tmux(
    'new-session',
    '-d',
    '-s',
    'call',
    '-x',
    '80',
    '-y',
    '40',
    `/bin/sh -c '${line.replaceAll("'", `'\\''`)}'`,
  );
};

describe.skipIf(!hasTmux)('a call on a real terminal of 80 columns (needs tmux)', () => {
  afterAll(() => void tmux('kill-server'));

  it('is left by Ctrl-C with 130 and gone on with, answered by digits, and ends with the ticket on stdout', async () => {
    begin();
    const first = await screenWith('> 1  ');
    expect(first).toContain('Never ask for a password.');
    expect(first).toContain('Question 1, to begin with');
    tmux('send-keys', '-t', 'call', 'C-c');
    await screenWith('status 130');
    tmux('kill-session', '-t', 'call');

    begin();
    await screenWith('Going on where the call stopped.');
    await screenWith('> 1  ');
    // "n": a note; "s": stop; "1": with a ticket.
    tmux('send-keys', '-t', 'call', 'n');
    await screenWith('Esc: commands');
    tmux('send-keys', '-t', 'call', '-l', 'Rings from the quay.');
    tmux('send-keys', '-t', 'call', 'Enter');
    await screenWith('= Rings from the quay.');
    tmux('send-keys', '-t', 'call', 's');
    await screenWith('Leave it open');
    tmux('send-keys', '-t', 'call', '1');
    await screenWith('status 0');
    tmux('kill-session', '-t', 'call');

    expect(readFileSync(ticket, 'utf8')).toContain('Rings from the quay.');
    expect(readFileSync(record, 'utf8').trim().split('\n')).toHaveLength(3);
    expect(readdirSync(folder)).not.toContain('call.jsonl.lock');
    expect(existsSync(socket)).toBe(true);
  });
});
