import fc from 'fast-check';
import type { CallEvent, CallHeader } from '../../src/call/events.js';
import { InputFault, MachineFault } from '../../src/files/faults.js';

export const WHYDARK = '0.1.0';

export const HEADER: CallHeader = {
  record: 1,
  id: 'harbour-7f3a',
  opened: '2026-11-25T08:30:00Z',
  whydark: WHYDARK,
  rules: { version: '0.1.0', digest: 'a'.repeat(64) },
  role: 'desk',
};

const at = '2026-11-25T08:31:00Z';

/** One sound event of every kind. */
export const ONE_OF_EACH: readonly CallEvent[] = [
  { at, type: 'answered', question: 'may-ask', answer: true, origin: 'said' },
  {
    at,
    type: 'answered',
    question: 'gateway',
    answer: '10.77.5.1',
    origin: 'pasted',
    paste: 'Gateway 10.77.5.1',
  },
  { at, type: 'agreed', question: 'gateway' },
  { at, type: 'undone' },
  { at, type: 'noted', text: 'Die Kamera über dem Tor: 北門 🌒\u2028second line\n' },
  { at, type: 'tried', remedy: 'reseat-lead', took: 'cant-tell', picture: 'no' },
  { at, type: 'passed-over', step: 'ask:lights' },
  { at, type: 'kept', contradiction: 'dark-but-live' },
  { at, type: 'tester-dealt', fault: 'other-subnet', outcome: 'put-right' },
  { at, type: 'moved', place: 'cabinet' },
  { at, type: 'closed', how: 'picture-back' },
  {
    at,
    type: 'pasted',
    paste: 'p1',
    origin: 'read',
    text: 'Gateway 10.77.5.1',
    answers: [{ question: 'gateway', answer: '10.77.5.1', line: 1 }],
  },
];

export function note(text: string, second = 0): CallEvent {
  return { at: `2026-11-25T08:31:${String(second % 60).padStart(2, '0')}Z`, type: 'noted', text };
}

export function lineOf(value: unknown): string {
  return `${JSON.stringify(value)}\n`;
}

const text = fc.string({ unit: 'binary', maxLength: 20 });
const answer = fc.oneof(
  text,
  fc.boolean(),
  fc.constant(null),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => (number === 0 ? 0 : number)),
  fc.array(text, { maxLength: 3 }),
);

/** Events as calls hold them: any text, any answer. */
export const anyEvent: fc.Arbitrary<CallEvent> = fc.oneof(
  fc.record({
    at: fc.constant(at),
    type: fc.constant('answered' as const),
    question: text,
    answer,
    origin: fc.constantFrom('said', 'agreed', 'pasted', 'read'),
  }),
  fc.record({ at: fc.constant(at), type: fc.constant('noted' as const), text }),
  fc.constantFrom(...ONE_OF_EACH),
);

/** The fault that some work throws. */
export function faultFrom(work: () => unknown): InputFault | MachineFault {
  try {
    work();
  } catch (error) {
    if (error instanceof InputFault || error instanceof MachineFault) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}
