import { expect, test } from 'vitest';
import { Answers } from '../../../src/here/discovery/answers.js';
import { type AddressWithMask, parseAddressWithMask, showAddress } from '../../../src/values/address.js';
import { ASKED, sampleAnswer } from './sample-answer.js';

function own(text: string): AddressWithMask {
  const read = parseAddressWithMask(text);
  if (!read.ok) throw new Error(text);
  return read.value;
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const answers = (): Answers => new Answers(ASKED, [own('172.23.40.5/24'), own('192.0.2.5/28')]);

test.each(['172.23.40.57', '10.77.5.20', '169.254.7.8', '100.64.1.2', '192.0.2.7'])(
  'an answer from %s is taken in, with its sender',
  (sender) => {
    const taken = answers();
    taken.take(bytes(sampleAnswer()), sender);
    expect(taken.found.map(({ from }) => showAddress(from))).toEqual([sender]);
  },
);

test.each(['192.0.2.20', '203.0.113.9', '127.0.0.1', '0.0.0.0', '224.0.0.1', 'fe80::57', ''])(
  'an answer from %s, where the multicast does not reach, is dropped',
  (sender) => {
    const taken = answers();
    taken.take(bytes(sampleAnswer()), sender);
    expect(taken.found).toEqual([]);
  },
);

test.each([`urn:uuid:${ASKED}`, `uuid:${ASKED}`, ASKED, `urn:uuid:${ASKED.toUpperCase()}`])(
  'an answer to %s is ours',
  (relatesTo) => {
    const taken = answers();
    taken.take(bytes(sampleAnswer({ relatesTo })), '172.23.40.57');
    expect(taken.found).toHaveLength(1);
  },
);

test.each(['urn:uuid:0a6dc791-2be6-4991-9af1-454778a1917b', ASKED.slice(1), `${ASKED}0`, 'urn:uuid:', '*'])(
  'an answer to %s is another one',
  (relatesTo) => {
    const taken = answers();
    taken.take(bytes(sampleAnswer({ relatesTo })), '172.23.40.57');
    expect(taken.found).toEqual([]);
  },
);

test('what is no UTF-8 is dropped', () => {
  const taken = answers();
  taken.take(Uint8Array.from([...bytes(sampleAnswer()), 0xff]), '172.23.40.57');
  expect(taken.found).toEqual([]);
});

test('a camera that answers twice is one, with all its addresses', () => {
  const taken = answers();
  taken.take(bytes(sampleAnswer()), '172.23.40.57');
  taken.take(
    bytes(sampleAnswer({ matches: [{ xaddrs: 'http://10.77.5.20/ http://172.23.40.57/' }] })),
    '10.77.5.20',
  );
  expect(taken.found.map(({ addresses }) => addresses.map(showAddress))).toEqual([
    ['172.23.40.57', '10.77.5.20'],
  ]);
});

test('after 64 answers it is enough, and junk does not count', () => {
  const taken = answers();
  for (let at = 0; at < 500; at += 1) taken.take(bytes('<junk/>'), '172.23.40.9');
  for (let at = 0; at < 64; at += 1) {
    expect(taken.isFull).toBe(false);
    taken.take(bytes(sampleAnswer({ matches: [{ endpoint: `urn:uuid:${at}` }] })), '172.23.40.57');
  }
  expect(taken.isFull).toBe(true);
  taken.take(bytes(sampleAnswer({ matches: [{ endpoint: 'urn:uuid:late' }] })), '172.23.40.57');
  expect(taken.found).toHaveLength(64);
});

test('one datagram cannot name more than 64 cameras of 16 addresses', () => {
  const taken = answers();
  const xaddrs = Array.from({ length: 20 }, (_, at) => `http://10.77.5.${at + 1}`).join(' ');
  const many = Array.from({ length: 80 }, (_, at) => ({
    endpoint: `urn:uuid:${at}`,
    scopes: '',
    xaddrs: '',
  }));
  taken.take(bytes(sampleAnswer({ matches: many })), '172.23.40.57');
  expect(taken.found).toHaveLength(64);
  taken.take(bytes(sampleAnswer({ matches: [{ endpoint: 'urn:uuid:0', xaddrs }] })), '172.23.40.57');
  expect(taken.found[0]?.addresses).toHaveLength(16);
});
