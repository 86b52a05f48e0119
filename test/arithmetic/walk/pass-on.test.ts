import { describe, expect, test } from 'vitest';
import type { Packet, Seen } from '../../../src/arithmetic/walk/leg.js';
import { refusal, sendOut, takeIn } from '../../../src/arithmetic/walk/pass-on.js';
import { chooseRoute } from '../../../src/arithmetic/walk/route.js';
import { address } from '../given.js';
import { INTERNET, LAPTOP, ROUTER } from './a-site.js';

function packet(source: string, destination: string, isReply = false): Packet {
  return { source: address(source), destination: address(destination), isReply };
}

const ASKED: Seen = {
  router: 'router',
  source: address('172.23.40.21'),
  destination: address('203.0.113.10'),
  outside: address('198.51.100.2'),
};

describe('taking a packet in', () => {
  test.each([
    ['its own', LAPTOP, packet('172.23.40.21', '172.23.40.184'), { kind: 'for-it' }],
    [
      'another one, as a host',
      LAPTOP,
      packet('172.23.40.21', '172.23.40.9'),
      { kind: 'stops', why: 'not-passed-on' },
    ],
    ['another one, as a router', ROUTER, packet('172.23.40.21', '203.0.113.10'), { kind: 'goes-on' }],
    [
      'from a self-assigned address',
      ROUTER,
      packet('169.254.3.4', '203.0.113.10'),
      { kind: 'stops', why: 'self-assigned' },
    ],
    [
      'to a self-assigned address',
      INTERNET,
      packet('203.0.113.10', '169.254.3.4'),
      { kind: 'stops', why: 'self-assigned' },
    ],
    [
      'an answer nobody asked for',
      ROUTER,
      packet('172.23.40.21', '172.23.40.184', true),
      { kind: 'stops', why: 'unasked-reply' },
    ],
    [
      'the same, where the router is not stateful',
      { ...ROUTER, dropsUnasked: false },
      packet('172.23.40.21', '172.23.40.184', true),
      { kind: 'goes-on' },
    ],
  ] as const)('%s', (_, device, given, expected) => {
    expect(takeIn(device, given, [])).toMatchObject(expected);
  });

  // RFC 3022, section 2.2.
  test('the answer to a question behind NAT goes to the one who asked', () => {
    const arrival = takeIn(ROUTER, packet('203.0.113.10', '198.51.100.2', true), [ASKED]);
    expect(arrival).toMatchObject({
      kind: 'goes-on',
      packet: { destination: ASKED.source },
      swaps: [{ what: 'destination', before: address('198.51.100.2'), after: ASKED.source }],
    });
  });

  test.each([
    ['from another sender', packet('203.0.113.11', '198.51.100.2', true), 'router'],
    ['that is no answer', packet('203.0.113.10', '198.51.100.2'), 'router'],
    ['remembered by another router', packet('203.0.113.10', '198.51.100.2', true), 'box'],
  ])('one %s is for the router itself', (_, given, router) => {
    expect(takeIn(ROUTER, given, [{ ...ASKED, router }])).toEqual({ kind: 'for-it' });
  });
});

describe('a way that may not be taken', () => {
  const ways = (destination: string) => chooseRoute(ROUTER, address(destination));

  test('between networks that are kept apart, in either direction, and not to the internet', () => {
    expect(refusal(ROUTER, ways('172.23.40.21'), 'guest', address('172.23.40.21'))).toBe('kept-apart');
    expect(refusal(ROUTER, ways('172.23.41.50'), 'lan', address('172.23.41.50'))).toBe('kept-apart');
    expect(refusal(ROUTER, ways('203.0.113.10'), 'guest', address('203.0.113.10'))).toBeUndefined();
    expect(refusal(ROUTER, ways('172.23.40.9'), 'lan', address('172.23.40.9'))).toBeUndefined();
  });

  test.each([
    ['10.77.5.21', 'private-on-internet'],
    ['172.23.40.21', 'private-on-internet'],
    ['100.64.7.2', 'private-on-internet'],
    ['9.10.11.12', 'no-route'],
    ['203.0.113.77', 'no-route'],
  ])('to %s on the internet: %s', (destination, why) => {
    const to = address(destination);
    expect(refusal(INTERNET, chooseRoute(INTERNET, to), 'wan', to)).toBe(why);
  });
});

describe('sending out', () => {
  const out = chooseRoute(ROUTER, address('203.0.113.10'));

  test('puts the own address in place of the sender, towards the internet only', () => {
    const question = packet('172.23.40.21', '203.0.113.10');
    expect(sendOut(ROUTER, question, 'lan', out)).toEqual({
      what: 'source',
      before: address('172.23.40.21'),
      after: address('198.51.100.2'),
    });
    expect(sendOut(ROUTER, question, 'lan', chooseRoute(ROUTER, address('172.23.41.50')))).toBeUndefined();
  });

  test('leaves answers and what came from the internet as they are', () => {
    expect(sendOut(ROUTER, packet('172.23.40.21', '203.0.113.10', true), 'lan', out)).toBeUndefined();
    expect(sendOut(ROUTER, packet('203.0.113.9', '203.0.113.10'), 'wan', out)).toBeUndefined();
  });
});
