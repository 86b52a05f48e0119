import { PassThrough } from 'node:stream';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Terminal } from '../../../src/cli/ask.js';
import {
  ended,
  NOTHING_PASTED,
  type Pasting,
  pastedText,
  pasting,
} from '../../../src/cli/prompts/pasted-text.js';
import { PLAIN } from './rendered.js';

// What xterm sends around a paste (XTerm Control Sequences, "Bracketed Paste Mode"), written out here anew.
const BEGINS = '\u001b[200~';
const ENDS = '\u001b[201~';
const ESC = '\u001b';
const CTRL_C = '\u0003';
const CTRL_D = '\u0004';
const PAGE = 'IP address: 172.23.40.57\r\nSubnet mask: 255.255.255.0\r\n\r\n\r\nGateway: 172.23.40.1\r\n';

const sent = (...chunks: readonly string[]): Pasting => chunks.reduce(pasting, NOTHING_PASTED);

describe('a marked paste', () => {
  it('ends by itself, and comes as it was, blank lines and all', () => {
    expect(sent(`${BEGINS}${PAGE}${ENDS}`)).toEqual({ text: PAGE, state: 'done' });
  });

  it('comes whole out of pieces, wherever it was cut', () => {
    const whole = `${BEGINS}${PAGE}${ENDS}`;
    for (let cut = 1; cut < whole.length; cut++)
      expect(sent(whole.slice(0, cut), whole.slice(cut)), `cut at ${cut}`).toEqual({
        text: PAGE,
        state: 'done',
      });
  });

  it('comes whole out of any number of pieces', () => {
    const piece = fc.constantFrom('172.23.40.57', '\r', '\n', '\r\n', 'mask', ' ', CTRL_D, 'ä', '🌒');
    fc.assert(
      fc.property(fc.array(piece), fc.array(fc.nat(200), { maxLength: 8 }), (pieces, cuts) => {
        const text = pieces.join('');
        const whole = `${BEGINS}${text}${ENDS}`;
        const places = [...new Set(cuts.filter((cut) => cut > 0 && cut < whole.length))].sort(
          (a, b) => a - b,
        );
        const chunks = [0, ...places].map((from, at) => whole.slice(from, places[at] ?? whole.length));
        expect(sent(...chunks)).toEqual({ text, state: 'done' });
      }),
    );
  });

  it.each([
    ['begins', [ESC, `[200~${PAGE}${ENDS}`]],
    ['begins, in three pieces', [ESC, '[20', `0~${PAGE}${ENDS}`]],
    ['ends', [`${BEGINS}${PAGE}`, ESC, '[201~']],
  ])('is not left by the Esc with which its mark %s', (_, chunks) => {
    expect(sent(...chunks)).toEqual({ text: PAGE, state: 'done' });
  });

  it('waits while only its Esc has come', () => {
    expect(sent(ESC).state).toBe('held');
    expect(sent(`${BEGINS}${PAGE}`, ESC).state).toBe('held');
  });

  it('is not ended by what ends an unmarked one', () => {
    for (const end of ['\r', '\n', CTRL_D]) expect(sent(BEGINS, PAGE, end, end, end, end).state).toBe('open');
  });

  it('leaves out what was typed before it, and behind it', () => {
    expect(sent('x', `${BEGINS}${PAGE}${ENDS}\r`)).toEqual({ text: PAGE, state: 'done' });
  });

  it('whose end never came is what came', () => {
    expect(ended(sent(`${BEGINS}${PAGE}`))).toEqual({ text: PAGE, state: 'done' });
  });
});

describe('an unmarked paste', () => {
  it.each([
    ['with the text', [`${PAGE}${CTRL_D}`]],
    ['by itself', [PAGE, CTRL_D]],
  ])('ends with Ctrl-D that comes %s', (_, chunks) => {
    expect(sent(...chunks)).toEqual({ text: PAGE, state: 'done' });
  });

  it.each(['\r', '\n'])('ends with Enter twice on an empty line, sent as %j', (enter) => {
    const text = `IP address: 172.23.40.57${enter}`;
    expect(sent(text, enter).state).toBe('open');
    expect(sent(text, enter, enter)).toEqual({ text: `${text}${enter}${enter}`, state: 'done' });
  });

  it('takes CRLF for one line end, not for Enter', () => {
    expect(sent('IP address: 172.23.40.57\r\n', '\r').state).toBe('open');
    expect(sent('IP address: 172.23.40.57\r\n', '\r', '\r').state).toBe('done');
    expect(sent('IP address: 172.23.40.57\r\n\r\n', '\r').state).toBe('done');
    expect(sent('a', '\r', '\n', '\r', '\n').state).toBe('open');
  });

  it('is not ended by blank lines within it, nor by one Enter before it', () => {
    expect(sent(PAGE).state).toBe('open');
    expect(sent('\r').state).toBe('open');
    expect(sent('\r', PAGE).state).toBe('open');
    expect(sent('\r', '\r').state).toBe('done');
  });

  it('whose stream ended is what came', () => {
    expect(ended(sent('IP address: 172.23.40.57'))).toEqual({
      text: 'IP address: 172.23.40.57',
      state: 'done',
    });
  });

  it('is taken as far as five million characters', () => {
    const { text, state } = sent('x'.repeat(4_999_999), 'yz');
    expect([text.length, text.at(-1), state]).toEqual([5_000_000, 'y', 'done']);
  });
});

describe('leaving', () => {
  it('takes Ctrl-C, whatever came before', () => {
    for (const before of [[], [PAGE], [`${BEGINS}${PAGE}`], [ESC]])
      expect(sent(...before, CTRL_C)).toEqual({ text: '', state: 'left' });
  });

  it('takes Esc behind which no mark follows', () => {
    expect(ended(sent(ESC))).toEqual({ text: '', state: 'left' });
    expect(ended(sent(PAGE, ESC))).toEqual({ text: '', state: 'left' });
    expect(sent(ESC, ESC).state).toBe('left');
    expect(sent(ESC, 'x').state).toBe('left');
    expect(sent(`${BEGINS}${PAGE}`, ESC, 'x').state).toBe('left');
  });
});

/** A terminal that is none, and what was done to it. */
function terminal(): {
  readonly given: Promise<string | undefined>;
  readonly input: PassThrough;
  readonly raw: readonly boolean[];
  readonly told: () => string;
} {
  const raw: boolean[] = [];
  const input = Object.assign(new PassThrough(), { setRawMode: (on: boolean) => raw.push(on) });
  const output = new PassThrough();
  let told = '';
  output.on('data', (chunk: Buffer) => {
    told += chunk.toString();
  });
  const given = pastedText({ input, output, paint: PLAIN } as unknown as Terminal);
  return { given, input, raw, told: () => told };
}

describe('on a terminal', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
  afterEach(() => void vi.useRealTimers());
  const settle = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

  it('asks for the text and for marks, shows none of it, and leaves the terminal as it was', async () => {
    const { given, input, raw, told } = terminal();
    expect(raw).toEqual([true]);
    input.write(`${BEGINS}${PAGE}${ENDS}`);
    expect(await given).toBe(PAGE);
    expect(raw).toEqual([true, false]);
    expect(told()).toMatch(/^Paste the text now\..*\n/);
    expect(told().slice(told().indexOf('\n'))).toBe('\n\u001b[?2004h\u001b[?2004l');
    expect(input.isPaused()).toBe(true);
    expect([input.listenerCount('data'), input.listenerCount('end')]).toEqual([0, 0]);
  });

  it('puts a character together that was cut within its bytes', async () => {
    const { given, input } = terminal();
    const bytes = Buffer.from(`${BEGINS}Kamera über dem Tor${ENDS}`);
    const cut = bytes.indexOf(0xbc);
    input.write(bytes.subarray(0, cut));
    await settle();
    input.write(bytes.subarray(cut));
    expect(await given).toBe('Kamera über dem Tor');
  });

  it('takes a marked paste whose Esc came by itself', async () => {
    const { given, input } = terminal();
    input.write(ESC);
    await settle();
    vi.advanceTimersByTime(400);
    input.write(`[200~${PAGE}${ENDS}`);
    expect(await given).toBe(PAGE);
    expect(vi.getTimerCount()).toBe(0);
  });

  it('is left by Esc after half a second, and not before', async () => {
    const { given, input, raw } = terminal();
    input.write(ESC);
    await settle();
    vi.advanceTimersByTime(499);
    expect(raw).toEqual([true]);
    vi.advanceTimersByTime(1);
    expect(await given).toBeUndefined();
    expect(raw).toEqual([true, false]);
  });

  it.each([
    ['Ctrl-C', [PAGE, CTRL_C]],
    ['Ctrl-D at once', [CTRL_D]],
    ['Enter twice at once', ['\r', '\r']],
    ['blanks only', [`${BEGINS} \r\n ${ENDS}`]],
  ])('gives nothing after %s', async (_, chunks) => {
    const { given, input } = terminal();
    for (const chunk of chunks) {
      input.write(chunk);
      await settle();
    }
    expect(await given).toBeUndefined();
  });

  it.each([
    ['unmarked', 'IP address: 172.23.40.57', 'IP address: 172.23.40.57'],
    ['marked', `${BEGINS}IP address: 172.23.40.57`, 'IP address: 172.23.40.57'],
    ['nothing', '', undefined],
  ])('that goes away gives what came: %s', async (_, came, text) => {
    const { given, input } = terminal();
    input.end(came);
    expect(await given).toBe(text);
  });
});
