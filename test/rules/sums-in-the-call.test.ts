import { describe, expect, it } from 'vitest';
import type { Origin, RawAnswer } from '../../src/answers/answer.js';
import { diagnosisOf, replay } from '../../src/call/call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT } from '../../src/call/events.js';
import { VERSION } from '../../src/call/version.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { inWords } from '../../src/messages/say.js';

const OPENED = '2026-11-25T09:00:00.000Z';
const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;

async function callWith(answers: Readonly<Record<string, RawAnswer>>, origin: Origin = 'said') {
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id: 'sums',
    opened: OPENED,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: 'desk',
  };
  const events = Object.entries(answers).map(
    ([question, answer]): CallEvent => ({ at: OPENED, type: 'answered', question, answer, origin }),
  );
  const result = await replay(rules, digest, header, events, { opening: 'skipped' });
  if (!result.ok) throw new Error(inWords(result.problem));
  return result.value;
}

const WIRED_AT_DUSK = { 'camera-type': 'wired', 'when-dark': 'dusk' };

describe('a sum that settles a finding in the call', () => {
  it.each<[string, Readonly<Record<string, RawAnswer>>, string, string]>([
    [
      'an hour between the clocks of camera and phone',
      {
        'camera-date': 'hour-off',
        'camera-clock-reads': '25 Nov 2026 13:30',
        'phone-clock-reads': '25 Nov 2026 14:31',
      },
      'clock-shift',
      'hours',
    ],
    [
      'a camera that fell back to the year it was made to start in',
      {
        'camera-date': 'far-off',
        'camera-clock-reads': '1 Jan 2000 03:12',
        'phone-clock-reads': '24 Nov 2026 16:57',
      },
      'clock-shift',
      'start-year',
    ],
    ['one ping lost of a hundred', { 'ping-loss': 1 }, 'loss', 'none'],
    ['twelve pings lost of a hundred', { 'ping-loss': 12 }, 'loss', 'some'],
    [
      'a short thick network lead',
      { ...WIRED_AT_DUSK, 'run-metres': 40, 'run-gauge': 23, 'camera-night-watts': 11 },
      'poe-run',
      'fine',
    ],
    [
      'a network lead of unknown size, too long for sure',
      { ...WIRED_AT_DUSK, 'run-metres': 480, 'run-gauge': 30, 'camera-night-watts': 24 },
      'poe-run',
      'impossible',
    ],
  ])('%s', async (_, answers, finding, value) => {
    const { situation } = await callWith(answers);
    expect(situation.settled.findings.get(finding)?.value).toBe(value);
  });

  it('writes the clock out line by line, and names where clips stand', async () => {
    const { defects } = diagnosisOf(
      await callWith({
        'camera-date': 'hour-off',
        'camera-clock-reads': '25 Nov 2026 13:30',
        'phone-clock-reads': '25 Nov 2026 14:31',
      }),
    );
    expect(defects.map(({ says }) => says).join(' ')).toContain('clips stand under another hour');
    expect(JSON.stringify(defects)).toContain('61 min');
  });

  it('never calls a guessed length proof, not even read back', async () => {
    const { defects } = diagnosisOf(
      await callWith(
        { ...WIRED_AT_DUSK, 'run-metres': 480, 'run-gauge': 30, 'camera-night-watts': 24 },
        'agreed',
      ),
    );
    expect(defects).toHaveLength(1);
    expect(defects[0]?.grade).toBe('follows');
  });
});
