import { expect, test } from 'vitest';
import { parseAnswer } from '../../../src/here/discovery/answer.js';
import { explain } from '../../../src/here/discovery/explain.js';
import { inWords } from '../../../src/messages/say.js';
import { type AddressWithMask, parseAddressWithMask, showAddress } from '../../../src/values/address.js';
import { type SampleMatch, sampleAnswer } from './sample-answer.js';

function own(...texts: readonly string[]): readonly AddressWithMask[] {
  return texts.map((text) => {
    const read = parseAddressWithMask(text);
    if (!read.ok) throw new Error(text);
    return read.value;
  });
}

const found = (...matches: readonly SampleMatch[]) => parseAnswer(sampleAnswer({ matches }));

test('a camera in a range of this computer can be opened', () => {
  const [said] = explain(found({}), own('10.77.5.5/22', '172.23.40.5/24'));
  expect(said?.isInRange).toBe(true);
  expect(said && inWords(said.sentence)).toBe(
    'The camera North Gate answered from 172.23.40.57. That is in the range 172.23.40.0/24 of this computer, so a browser here can open it.',
  );
});

test('of several addresses the one in a range counts', () => {
  const xaddrs = 'http://10.77.9.20/ http://172.23.40.57/';
  const [said] = explain(found({ xaddrs }), own('172.23.40.5/24'));
  expect(said?.isInRange).toBe(true);
  expect(said?.address && showAddress(said.address)).toBe('172.23.40.57');
});

test('a camera outside gets a temporary address of this computer, which is nobody else its', () => {
  const cameras = found(
    { xaddrs: 'http://10.77.5.20/', scopes: '' },
    { endpoint: 'urn:uuid:2', xaddrs: 'http://10.77.5.21/' },
  );
  const [said, other] = explain(cameras, own('172.23.40.5/24'));
  expect(said?.isInRange).toBe(false);
  expect(said && inWords(said.sentence)).toBe(
    'A camera that gives no name answered. Its address 10.77.5.20 is in none of the ranges of this computer, so a browser here cannot open it. Give this computer the address 10.77.5.19 with the mask 255.255.255.0 for a while.',
  );
  expect(said?.temporary && showAddress(said.temporary.address)).toBe('10.77.5.19');
  expect(other?.temporary && showAddress(other.temporary.address)).not.toBe('10.77.5.20');
});

test('the mask of this computer decides, not the look of the numbers', () => {
  const cameras = found({ xaddrs: 'http://10.77.6.20/' });
  expect(explain(cameras, own('10.77.5.5/24'))[0]?.isInRange).toBe(false);
  expect(explain(cameras, own('10.77.5.5/22'))[0]?.isInRange).toBe(true);
  expect(explain(cameras, [])[0]?.isInRange).toBe(false);
});

test.each([
  [
    'http://203.0.113.9/',
    'The camera North Gate answered, but the address 203.0.113.9 that it gives is not one of a local network. Look at its network settings.',
  ],
  [
    'http://[fe80::57]/',
    'The camera North Gate answered, but gives no IPv4 address. Look for it in the device list of the router.',
  ],
])('a camera at %s', (xaddrs, sentence) => {
  const [said] = explain(found({ xaddrs }), own('172.23.40.5/24'));
  expect(said && inWords(said.sentence)).toBe(sentence);
  expect(said?.temporary).toBeUndefined();
});
