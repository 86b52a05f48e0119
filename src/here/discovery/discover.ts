import { randomUUID } from 'node:crypto';
import { createSocket } from 'node:dgram';
import type { Sentence } from '../../messages/say.js';
import { type Address, type AddressWithMask, showAddress } from '../../values/address.js';
import { type Answered, Answers } from './answers.js';
import { probeMessage } from './probe-message.js';

/** Where to search from. `own` are all ranges of this computer. */
export interface Search {
  readonly local: Address;
  readonly own: readonly AddressWithMask[];
  readonly uuid?: string;
  readonly milliseconds?: number;
}

export interface Discovered {
  readonly found: readonly Answered[];
  /** Why nothing could be sent. */
  readonly missed?: Sentence;
}

/** The address and the port of WS-Discovery, both of April 2005 and 1.1. */
const GROUP = '239.255.255.250';
const PORT = 3702;
/** Devices answer within four seconds; the firewall of Windows may drop what comes later (WSDAPI, "ProbeMatches Message"). */
const PATIENCE = 4000;

/**
 * Sends one Probe to the multicast group from one adapter, through no router (a time to live of 1), and takes in what
 * is answered to that port for four seconds. Never rejects.
 */
export function discover(search: Search): Promise<Discovered> {
  const { local, own, uuid = randomUUID(), milliseconds = PATIENCE } = search;
  const address = showAddress(local);
  const answers = new Answers(uuid, own);
  const message = probeMessage(uuid);
  return new Promise((resolve) => {
    const socket = createSocket('udp4');
    let hasEnded = false;
    const end = (missed?: Sentence): void => {
      if (hasEnded) return;
      hasEnded = true;
      clearTimeout(limit);
      socket.removeAllListeners('message').close();
      resolve({ found: answers.found, ...(missed !== undefined && { missed }) });
    };
    const fail = (): void => end({ id: 'here.search-no-network', with: { address } });
    const limit = setTimeout(end, milliseconds);
    socket.on('error', fail);
    socket.on('message', (bytes, { address: sender }) => {
      answers.take(bytes, sender);
      if (answers.isFull) end();
    });
    socket.bind({ address, port: 0, exclusive: true }, () => {
      try {
        socket.setMulticastInterface(address);
        socket.setMulticastTTL(1);
      } catch {
        return fail();
      }
      socket.send(message, PORT, GROUP, (error) => {
        if (error !== null) fail();
      });
    });
  });
}
