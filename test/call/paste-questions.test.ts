import { describe, expect, it } from 'vitest';
import {
  aboutOf,
  hereQuestion,
  ownerNamed,
  whichAdapter,
  whoseQuestions,
} from '../../src/call/paste-questions.js';
import { readPaste } from '../../src/intake/paste.js';
import { TINY } from './tiny-rule-base.js';

const NOBODYS = readPaste('Address 172.23.40.22\nMask 255.255.255.0\nGateway 172.23.41.1\n');
const CAMERAS = readPaste('Camera\nAddress 172.23.40.22\nMask 255.255.255.0\n');
const adapter = (name: string, address: string): string =>
  `Ethernet adapter ${name}:\r\n\r\n   IPv4 Address. . . . . . . . . . . : ${address}\r\n   Subnet Mask . . . . . . . . . . . : 255.255.255.0\r\n\r\n`;
const ONE = readPaste(`\r\nWindows IP Configuration\r\n\r\n${adapter('Yard', '172.23.40.112')}`);
const TWO = readPaste(
  `\r\nWindows IP Configuration\r\n\r\n${adapter('Yard', '172.23.40.112')}${adapter('Barn', '10.77.5.9')}`,
);
const ids = (choices: readonly { readonly id: string }[]) => choices.map(({ id }) => id);

/** A call that asks this question, as far as a text is concerned. */
function asking(reads: string) {
  const rules = { ...TINY, questions: TINY.questions.map((one) => ({ ...one, reads })) };
  const step = { kind: 'ask', question: 'camera-mask', group: [], purpose: { kind: 'opening' } } as const;
  return { rules, step };
}

describe('numbers that a text gives to nobody', () => {
  it('are asked about, with what the step asks about on top', () => {
    const [question, ...others] = whoseQuestions(asking('router.mask'), NOBODYS);
    expect(question?.say).toContain('172.23.40.22');
    expect(ids(question?.choices ?? [])).toEqual(['router', 'camera', 'phone', 'computer', 'unknown']);
    expect(others).toEqual([]);
  });

  it('are not asked about where the text says whose they are', () => {
    expect(whoseQuestions(asking('camera.mask'), CAMERAS)).toEqual([]);
  });

  it('stay with nobody where none is named', () => {
    expect(ownerNamed('unknown')).toBeUndefined();
    expect(ownerNamed('router')).toBe('router');
  });
});

describe('whether a text is of the place', () => {
  it.each([
    ['one adapter of a computer', ONE, ['yes', 'no', 'none']],
    ['two of them', TWO, ['yes', 'other', 'no', 'none']],
    ['what a camera says of itself', CAMERAS, ['take', 'none']],
  ])('%s', (_, paste, wanted) => {
    expect(ids(hereQuestion(paste).choices)).toEqual(wanted);
  });

  it('is taken as it was said', () => {
    expect(aboutOf(ONE, 'yes')).toEqual({ isHere: true, adapter: 0 });
    expect(aboutOf(CAMERAS, 'take')).toEqual({ isHere: true });
    expect(aboutOf(ONE, 'no')).toEqual({ isHere: false });
    expect(aboutOf(TWO, 'other')).toBe('other');
    expect(aboutOf(ONE, 'none')).toBe('none');
    expect(aboutOf(ONE, '')).toBe('none');
  });

  it('lets another adapter be named', () => {
    expect(whichAdapter(TWO)).toEqual([
      { id: '0', title: '"Yard"' },
      { id: '1', title: '"Barn"' },
    ]);
  });
});
