import { describe, expect, test } from 'vitest';
import { REACH } from '../../../src/arithmetic/topics/reach.js';
import type { Given } from '../../../src/arithmetic/topics/topic.js';
import { refused, sumOf } from './given.js';

const HEALTHY: Given = {
  'camera-address': '172.23.40.21',
  'camera-mask': '/24',
  'camera-gateway': '172.23.40.1',
  'computer-address': '172.23.40.184',
  'computer-mask': '/24',
  'computer-gateway': '172.23.40.1',
  'router-address': '172.23.40.1',
  'router-mask': '/24',
};
const NARROW: Given = { ...HEALTHY, 'camera-mask': '/25' };
const ELSEWHERE: Given = {
  ...HEALTHY,
  'computer-address': '172.23.41.50',
  'computer-gateway': '172.23.41.1',
};

/** Computer to camera, camera to computer, camera to internet. */
function outcomes(given: Given): readonly unknown[] {
  const { walks } = sumOf(REACH, given).data as { walks: readonly { outcome: string }[] };
  return walks.map(({ outcome }) => outcome);
}

describe('who reaches whom, alone', () => {
  test('healthy settings are fine whatever the router does', () => {
    expect(sumOf(REACH, HEALTHY).verdict).toBe('fine');
    expect(outcomes(HEALTHY)).toEqual(['reaches', 'reaches', 'reaches']);
  });

  test('a mask too narrow hangs on the router, which would decide it', () => {
    const { verdict, decides, words, data } = sumOf(REACH, NARROW);
    expect([verdict, decides]).toEqual(['doubtful', 'stateful-router']);
    expect(words.at(-1)).toBe(
      'That holds for a router that drops answers to questions it never saw. With one that does not, it comes out differently.',
    );
    expect(data).toMatchObject({
      ifStateful: { ways: 'only-second', oneWay: true },
      ifNot: { ways: 'both' },
    });
  });

  test.each([
    ['yes', 'impossible', 'reply-lost'],
    ['no', 'fine', 'reaches'],
  ])('with the router known to be stateful: %s, it is %s', (stateful, verdict, toCamera) => {
    const given = { ...NARROW, 'stateful-router': stateful };
    expect(sumOf(REACH, given).verdict).toBe(verdict);
    expect(sumOf(REACH, given).decides).toBeUndefined();
    expect(outcomes(given)).toEqual([toCamera, 'reaches', 'reaches']);
  });

  test.each([
    [{ isolation: 'yes' }, ['no-arp-answer', 'no-arp-answer', 'reaches']],
    [{ 'camera-gateway': '172.23.99.1' }, ['reaches', 'reaches', 'gateway-outside']],
    [{ 'camera-gateway': 'none' }, ['reaches', 'reaches', 'no-gateway']],
    [{ 'camera-gateway': '172.23.40.21' }, ['reaches', 'reaches', 'no-arp-answer']],
    [{ 'camera-gateway': '172.23.40.184' }, ['reaches', 'reaches', 'not-passed-on']],
    [
      { 'camera-address': '10.77.5.21', 'camera-gateway': '10.77.5.1' },
      ['private-on-internet', 'no-arp-answer', 'no-arp-answer'],
    ],
    [{ 'camera-address': '172.23.40.184' }, ['wrong-device', 'wrong-device', 'reply-lost']],
  ])('with %j: %j', (more, expected) => {
    const given = { ...HEALTHY, ...more };
    expect(outcomes(given)).toEqual(expected);
    expect(sumOf(REACH, given).verdict).toBe('impossible');
  });

  test.each([
    ['routed', ['reaches', 'reaches', 'reaches']],
    ['guest', ['kept-apart', 'kept-apart', 'reaches']],
    ['same', ['no-arp-answer', 'private-on-internet', 'reaches']],
  ])('with the computer in another range, segments %s: %j', (segments, expected) => {
    expect(outcomes({ ...ELSEWHERE, 'same-segment': segments })).toEqual(expected);
  });

  test('says what it took as given, and only that', () => {
    expect(sumOf(REACH, HEALTHY).words.slice(0, 3)).toEqual([
      'Taken as given: camera and computer are on the same cable network or Wi-Fi.',
      'Taken as given: nothing keeps devices on one network from each other.',
      'For the internet the address 203.0.113.10 stands as an example.',
    ]);
    const all = { ...HEALTHY, 'same-segment': 'same', isolation: 'no', 'stateful-router': 'yes' };
    expect(sumOf(REACH, all).words[0]).toBe(
      'For the internet the address 203.0.113.10 stands as an example.',
    );
  });

  test.each([
    [{ ...HEALTHY, 'router-mask': '' }, 'router-mask', 'amount.missing'],
    [{ ...HEALTHY, 'same-segment': 'perhaps' }, 'same-segment', 'amount.not-a-choice'],
    [{ ...HEALTHY, 'computer-address': '172.23.40.184/24' }, 'computer-address', 'typed.address-with-mask'],
  ])('refuses what cannot be read, naming the input', (given, input, id) => {
    expect(refused(REACH, given)).toEqual([input, id]);
  });
});
