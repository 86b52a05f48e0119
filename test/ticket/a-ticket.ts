import type { Diagnosis } from '../../src/diagnosis/diagnosis.js';
import type { TicketInput } from '../../src/ticket/ticket-input.js';

/** An invented call about an invented place: the gateway of the camera lies outside its subnet. */
export function aTicket(): TicketInput {
  return {
    call: '7f3a-22c1',
    opened: '2026-11-25T09:05:12Z',
    closed: '2026-11-25T09:31:40.250Z',
    whydark: '0.1.0',
    role: 'desk',
    diagnosis: aDiagnosis(),
    head: [
      { part: 'camera', title: 'Name of the camera', text: 'Boathouse, north wall' },
      {
        part: 'where',
        title: 'Port, and what the label says',
        text: 'Port 4, S/N DEMO20417733, MAC 00-1B-44-11-3A-B7',
      },
      { part: 'words', title: 'What the screen says', text: 'It says "offline" | since the new router.' },
      { part: 'since', title: 'Dark since', text: '2026-11-23, in the evening' },
      { part: 'promised', title: 'Promised', text: 'Ring back on 07700 900123 before 16:00' },
    ],
    asked: [
      asked('which-cameras', 'One camera or all', 'One'),
      asked('camera-address', 'Address of the camera', '172.23.40.57', 'agreed'),
      asked('camera-mask', 'Mask of the camera', '255.255.255.0', 'pasted'),
      asked('camera-gateway', 'Gateway of the camera', '172.23.41.1', 'agreed'),
      asked('router-address', 'Address of the router', '172.23.40.1', 'read'),
      asked('lights', 'Lights at the socket', "can't tell"),
      { ...asked('local-page', 'Page of the camera opens', 'no'), superseded: true },
    ],
    tried: [
      {
        remedy: 'restart-camera',
        title: 'Restart the camera',
        took: 'yes',
        picture: 'no',
        leaves: 'The camera has started again. Nothing else was changed.',
        sums: [],
        undo: 'Nothing to undo.',
      },
    ],
    notes: ['The owner has the key of the boathouse.', 'Router swapped by ann@mail.example.'],
  };
}

function asked(
  question: string,
  title: string,
  answer: string,
  origin: TicketInput['asked'][number]['origin'] = 'said',
): TicketInput['asked'][number] {
  return { question, title, answer, origin, superseded: false };
}

function aDiagnosis(): Diagnosis {
  return {
    format: 1,
    rules: { version: '0.1.0', digest: '3fa9c1d2e4b5'.padEnd(64, '0') },
    verdict: {
      kind: 'named',
      says: 'The camera has a default gateway that is not on its own network.',
      cause: 'gateway-outside-subnet',
      probability: 0.874,
      confidence: 'very-likely',
    },
    ranked: [
      {
        id: 'gateway-outside-subnet',
        kind: 'cause',
        title: 'Gateway outside the subnet',
        stage: 'gateway',
        probability: 0.874,
        reasons: [
          reason('gateway-in-subnet', 'Gateway in the subnet', 'outside', 21.34),
          reason('local-page', 'Page of the camera on site', 'opens', 2),
          reason('history', 'Has it ever worked', 'until two days ago', -1.5),
          {
            ...reason('ping', 'Ping from the computer', 'answers', 0),
            repeats: 'local-page',
          },
        ],
      },
      {
        id: 'stale-service-registration',
        kind: 'cause',
        title: 'The service holds an old registration',
        stage: 'rendezvous',
        probability: 0.09,
        reasons: [reason('gateway-in-subnet', 'Gateway in the subnet', 'outside', -8.1)],
      },
      {
        id: 'other-in-internet',
        kind: 'other',
        title: 'Something else on the way to the internet',
        probability: 0.003,
        reasons: [],
      },
    ],
    defects: [
      {
        finding: 'gateway-in-subnet',
        grade: 'proven',
        says: 'The gateway 172.23.41.1 is outside 172.23.40.0/24, the network of the camera.',
        cause: 'gateway-outside-subnet',
        lines: [
          '172.23.40.57 with mask 255.255.255.0 (/24) belongs to the network 172.23.40.0.',
          'Devices there have addresses from 172.23.40.1 to 172.23.40.254.',
          '172.23.41.1 is outside it.',
        ],
      },
      {
        finding: 'power-at-camera',
        grade: 'follows',
        says: 'The supply gives 37.2 V at the camera; at least 37 V are needed.',
        lines: ['44 V - 0.35 A × 19.4 Ω = 37.2 V'],
      },
    ],
    works: [
      {
        finding: 'local-page',
        says: 'Page of the camera on site: opens',
        clears: ['power', 'camera', 'link', 'address'],
      },
    ],
    spoilt: [
      {
        fault: 'left-over-address',
        title: 'The computer still has a temporary address',
        help: ['Set the network adapter back to automatic.', 'Then open the page of the camera again.'],
      },
    ],
    conflicts: [
      {
        id: 'router-and-gateway',
        says: 'The router and the gateway of the camera cannot both be as read out.',
        between: ['camera-gateway', 'router-address'],
      },
    ],
    path: [
      { id: 'power', title: 'Power', side: 'camera', state: 'good', probability: 0 },
      { id: 'address', title: 'Address', side: 'camera', state: 'good', probability: 0.01 },
      { id: 'gateway', title: 'Gateway', side: 'camera', state: 'faulty', probability: 0.874 },
      { id: 'rendezvous', title: 'Rendezvous', side: 'joined', state: 'suspect', probability: 0.09 },
      { id: 'phone-network', title: 'Phone network', side: 'phone', state: 'unseen', probability: 0.01 },
      { id: 'recording', title: 'Recording', side: 'joined', state: 'unseen', probability: 0.01 },
    ],
    next: 'try:correct-gateway',
    plan: [
      {
        remedy: 'correct-gateway',
        title: 'Put the gateway right',
        who: 'owner',
        where: 'At the computer',
        minutes: 5,
        how: ['Write down the old gateway.', 'Type 172.23.40.1 as the default gateway, and save.'],
        cautions: ['Saving ends the connection to the camera for a minute.'],
        check: 'The page of the camera shows the new gateway.',
        undo: 'Type the old gateway again.',
      },
      {
        remedy: 'look-at-the-run',
        title: 'Look at the plug at the camera',
        who: 'installer',
        where: 'At the camera',
        minutes: 17,
        how: ['Show first everything that is to be done up there.'],
        cautions: [
          'Work at height: an installer only, by the local code.',
          'No phone in the hand on a ladder.',
        ],
        check: 'The light at the socket is on.',
        undo: '',
      },
    ],
    visit: {
      minutes: 120,
      days: 1.5,
      doThere: ['Put the gateway right', 'Look at the plug at the camera'],
      bring: ['Ladder', 'Known-good patch lead'],
      cautions: ['Work up a ladder is for the installer; local codes decide.'],
    },
    watch: 'Watch ten minutes, and ring back after the next night.',
  };
}

function reason(
  finding: string,
  title: string,
  shows: string,
  decibans: number,
): Diagnosis['ranked'][number]['reasons'][number] {
  return { finding, title, value: shows, shows, decibans };
}

/** The same call, out of scope and just begun: most sections have nothing in them. */
export function anEmptyTicket(): TicketInput {
  const { closed: _, ...input } = aTicket();
  const { visit: __, watch: ___, ...diagnosis } = aDiagnosis();
  return {
    ...input,
    role: 'site',
    head: [],
    asked: [],
    tried: [],
    notes: [],
    diagnosis: {
      ...diagnosis,
      verdict: {
        kind: 'out-of-scope',
        says: 'Cameras behind a recorder are not covered.',
        probability: 0,
        confidence: 'not-enough',
      },
      ranked: [],
      defects: [],
      works: [],
      spoilt: [],
      conflicts: [],
      path: [],
      next: 'end:out-of-scope',
      plan: [],
    },
  };
}
