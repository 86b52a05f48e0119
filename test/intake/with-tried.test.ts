import { expect, test } from 'vitest';
import { observationsIn } from '../../src/intake/observations.js';
import { readPaste } from '../../src/intake/paste.js';
import { withTried } from '../../src/intake/with-tried.js';
import { address } from '../arithmetic/given.js';

const camera = address('172.23.40.57');
const TEXT = 'computer ip 172.23.40.5 mask 255.255.255.0\ngateway 172.23.40.1';
const ping = { target: '172.23.40.57', address: camera, sent: 3, received: 0, hasDuplicates: false };

test('what was tried stands on a line of its own below the text', () => {
  const words = ['Ping 172.23.40.57: 0 of 3 came back', '172.23.40.57, port 80: open'];
  const paste = withTried(readPaste(TEXT), {
    words,
    pings: [{ ...ping, troubles: [{ kind: 'timed-out', line: 1 }], line: 1 }],
    ports: [{ target: '172.23.40.57', address: camera, port: 80, isOpen: true, line: 2 }],
  });
  const { seen } = paste.reading;
  const lines = paste.text.split('\n');
  expect(lines[(seen.pings[0]?.line ?? 0) - 1]).toBe(words[0]);
  expect(lines[(seen.pings[0]?.troubles[0]?.line ?? 0) - 1]).toBe(words[0]);
  expect(lines[(seen.ports[0]?.line ?? 0) - 1]).toBe(words[1]);
  expect(observationsIn(seen, { camera })).toContainEqual({ id: 'camera.answers', value: false, line: 3 });
});

test('a second round stands below the first', () => {
  const first = withTried(readPaste(TEXT), { words: ['one'], pings: [{ ...ping, troubles: [], line: 1 }] });
  const second = withTried(first, { words: ['two'], pings: [{ ...ping, troubles: [], line: 1 }] });
  expect(second.reading.seen.pings.map(({ line }) => line)).toEqual([3, 4]);
});

test('below no text at all the first line is the first', () => {
  const paste = withTried(readPaste(''), { words: ['one'], pings: [{ ...ping, troubles: [], line: 1 }] });
  expect([paste.text, paste.reading.seen.pings[0]?.line]).toEqual(['one', 1]);
});

test('where nothing was tried the text stays as it is', () => {
  const paste = readPaste(TEXT);
  expect(withTried(paste, { words: [] })).toBe(paste);
});
