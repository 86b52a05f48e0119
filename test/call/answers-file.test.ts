import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnswersFile, readAnswersFile, readAnswersText } from '../../src/call/answers-file.js';
import { inWords } from '../../src/messages/say.js';
import { AT } from './play.js';
import { TINY } from './tiny-rule-base.js';

const read = (json: unknown): AnswersFile => readAnswersFile(TINY, json, AT);

function problems(file: AnswersFile): readonly string[] {
  return file.ok ? [] : file.problems.map(({ pointer, says }) => `${pointer} ${inWords(says)}`);
}

describe('an answers file', () => {
  it('gives an event for each answer, said unless it says otherwise', () => {
    const file = read({
      role: 'site',
      answers: { lights: 'off', account: null, 'camera-mask': { answer: '255.255.255.0', origin: 'read' } },
    });
    expect(file).toEqual({
      ok: true,
      role: 'site',
      events: [
        { at: AT, type: 'answered', question: 'lights', answer: 'off', origin: 'said' },
        { at: AT, type: 'answered', question: 'account', answer: null, origin: 'said' },
        { at: AT, type: 'answered', question: 'camera-mask', answer: '255.255.255.0', origin: 'read' },
      ],
    });
  });

  it('is of the desk unless it says otherwise, and may name its schema', () => {
    expect(read({ $schema: 'x', answers: {} })).toEqual({ ok: true, role: 'desk', events: [] });
  });

  it('says everything that is wrong at once, each with its place', () => {
    const found = problems(
      read({
        rôle: 'desk',
        role: 'owner',
        answers: {
          ligts: 'off',
          lights: 'blue',
          account: 'perhaps',
          volts: { answer: 12, orgin: 'read' },
          kit: { answer: ['crane'], origin: 'guessed' },
        },
      }),
    );
    expect(found.map((line) => line.split(' ')[0])).toEqual([
      '/rôle',
      '/role',
      '/answers/ligts',
      '/answers/lights',
      '/answers/account',
      '/answers/volts/orgin',
      '/answers/kit',
    ]);
    expect(found.join('\n')).toContain('Did you mean "lights"?');
    expect(found.join('\n')).toContain('on, off');
    expect(found.join('\n')).toContain('said, agreed, pasted, read');
  });

  it('escapes the parts of a pointer (RFC 6901 section 3)', () => {
    expect(problems(read({ answers: { 'a/b~c': 1 } }))[0]).toMatch(/^\/answers\/a~1b~0c /);
  });

  it.each([null, [], 'answers', 7, {}, { answers: null }, { answers: [] }, { answers: 'off' }])(
    'that is %j is told what it should look like',
    (json) => {
      expect(problems(read(json))).toEqual([expect.stringContaining('one JSON object with "answers" in it')]);
    },
  );

  it('takes names like __proto__ as names', () => {
    const found = problems(
      readAnswersText(TINY, '{"answers": {"__proto__": {"answer": 1}, "constructor": true}}', AT),
    );
    expect(found).toHaveLength(2);
    expect(found[0]).toContain('/answers/__proto__ There is no question "__proto__"');
  });

  it('never throws, whatever JSON it is', () => {
    fc.assert(fc.property(fc.jsonValue(), (json) => void read(json)));
    fc.assert(fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (answers) => void read({ answers })));
  });
});

describe('the text of an answers file', () => {
  it.each([
    ['{"answers": }', 'line 1, column 13'],
    ['{\n  "answers": {"lights": "off",}\n}', 'line 2, column 31'],
    ['{"answers": {', 'ends too early'],
    ['{"answers": {"lights": "on", "lights": "off"}}', '"lights" stands twice'],
    ['', 'ends too early'],
  ])('that breaks, %j, names the place', (text, place) => {
    const found = problems(readAnswersText(TINY, text, AT));
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(place);
  });

  it('that is sound is read', () => {
    expect(readAnswersText(TINY, ' {"answers": {"lights": "off"}}\n', AT)).toMatchObject({
      ok: true,
      events: [{ question: 'lights' }],
    });
  });
});
