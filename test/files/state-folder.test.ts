import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { callsFolder, makeCallsFolder } from '../../src/files/state-folder.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
const mode = (path: string) => statSync(path).mode & 0o777;

// XDG Base Directory Specification 0.8: XDG_STATE_HOME defaults to $HOME/.local/state where it is unset or
// empty; a relative path in it is invalid and to be ignored; a missing folder is made with mode 0700.
test.each([
  [{}, '/home/mara', '/home/mara/.local/state/whydark/calls'],
  [{ XDG_STATE_HOME: '' }, '/home/mara', '/home/mara/.local/state/whydark/calls'],
  [{ XDG_STATE_HOME: 'state' }, '/home/mara', '/home/mara/.local/state/whydark/calls'],
  [{ XDG_STATE_HOME: '/var/state' }, '/home/mara', '/var/state/whydark/calls'],
  [{ XDG_STATE_HOME: '/var/state' }, '', '/var/state/whydark/calls'],
])('with %j and the home %s, calls are kept in %s', (env, home, calls) => {
  expect(callsFolder(env, home)).toBe(calls);
});

test('takes the environment of the process as it is', () => {
  expect(callsFolder(process.env, '/home/mara')).toMatch(/whydark.calls$/);
});

test('says so where there is no home', () => {
  expect(faultFrom(() => callsFolder({}, ''))).toMatchObject({ exit: 3, sentence: { id: 'files.no-home' } });
});

test.skipIf(process.platform === 'win32')(
  'makes every missing folder for its owner only, whatever the umask',
  () => {
    const before = process.umask(0);
    try {
      const calls = callsFolder({}, folder);
      makeCallsFolder(calls);
      for (const path of ['.local', '.local/state', '.local/state/whydark', '.local/state/whydark/calls'])
        expect(mode(join(folder, path))).toBe(0o700);
    } finally {
      process.umask(before);
    }
  },
);

test('leaves a folder that is there as it is', () => {
  const calls = join(folder, 'open');
  mkdirSync(calls, { mode: 0o750 });
  makeCallsFolder(calls);
  expect(mode(calls)).toBe(0o750);
});

test.each(['blocked', 'blocked/whydark/calls'])('says so where a file stands at or above %s', (path) => {
  writeFileSync(join(folder, 'blocked'), '');
  expect(faultFrom(() => makeCallsFolder(join(folder, path)))).toMatchObject({
    exit: 2,
    sentence: { id: 'files.not-folder' },
  });
});
