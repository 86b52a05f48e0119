import { describe, expect, it } from 'vitest';
import { commandOf, oneFile, readOptions } from '../../src/cli/options.js';
import { InputFault } from '../../src/files/faults.js';

/** The sentence of the fault that a command line brings. */
function faultOf(argv: readonly string[], inputs: readonly string[] = []): string {
  try {
    readOptions(argv, inputs);
  } catch (error) {
    if (error instanceof InputFault) return error.message;
    throw error;
  }
  return 'none';
}

describe('a command line', () => {
  it('is a command, what it works on, and options in any order', () => {
    expect(readOptions(['--site', 'call', '--record', 'a.jsonl', '--rules=other'])).toEqual({
      command: 'call',
      operands: [],
      record: 'a.jsonl',
      rules: ['other'],
      site: true,
      json: false,
      unmasked: false,
      csv: false,
      html: false,
      help: false,
      version: false,
      given: {},
    });
    expect(readOptions(['diagnose', '-', '--json'])).toMatchObject({
      command: 'diagnose',
      operands: ['-'],
      json: true,
    });
    expect(readOptions(['-h'])).toMatchObject({ command: undefined, help: true });
  });

  it('may hold a name that looks like an option after --', () => {
    expect(readOptions(['diagnose', '--', '--json'])).toMatchObject({ operands: ['--json'], json: false });
  });

  it('brings the options that only one command has, as typed', () => {
    expect(
      readOptions(['reckon', 'subnet', '--mask', '/24', '--offset', '-90'], ['mask', 'offset']).given,
    ).toEqual({ mask: '/24', offset: '-90' });
    expect(faultOf(['reckon', '--maks', '/24'], ['mask'])).toContain('Did you mean "--mask"?');
    expect(faultOf(['call', '--mask', '/24'])).toContain('There is no option "--mask"');
  });

  it.each([
    [['--jsno'], 'There is no option "--jsno". Did you mean "--json"?'],
    [['-x'], 'There is no option "-x".'],
    [['--record'], 'The option "--record" needs a name after it.'],
    [['--record='], 'The option "--record" needs a name after it.'],
    [['--record', '--json'], 'The option "--record" needs a name after it.'],
    [['--json=yes'], 'The option "--json" stands alone'],
    [['--constructor'], 'There is no option "--constructor".'],
    [['--__proto__'], 'There is no option "--__proto__".'],
    [['--\u001b[2J'], 'There is no option "--?[2J".'],
  ])('%j is told what is wrong', (argv, says) => {
    expect(faultOf(argv)).toContain(says);
  });

  it('has a command even where options stand before it', () => {
    expect(commandOf(['--rules', 'reckon', 'call'])).toBe('call');
    expect(commandOf(['--json', 'reckon'])).toBe('reckon');
    expect(commandOf([])).toBeUndefined();
  });

  it('for one file takes just one', () => {
    expect(oneFile(readOptions(['ticket', 'a']))).toBe('a');
    expect(() => oneFile(readOptions(['ticket']))).toThrow('needs a file: whydark ticket FILE');
    expect(() => oneFile(readOptions(['ticket', 'a', 'b']))).toThrow('"b" is left over');
  });
});
