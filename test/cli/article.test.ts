import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { htmlDocument } from '../../src/knowledge/html.js';
import { terminalText } from '../../src/knowledge/terminal.js';
import { FILES, LEAD } from '../knowledge/an-article.js';
import { run as runBuilt } from './built.js';

/** The built command with articles of the test's own beside it. */
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'whydark-article-'));
  cpSync('dist', join(folder, 'dist'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  rmSync(join(folder, 'dist/knowledge'), { recursive: true, force: true });
  for (const { file, text } of FILES) {
    const path = join(folder, 'dist/knowledge', file);
    mkdirSync(join(path, '..'), { recursive: true });
    writeFileSync(path, text);
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...words: string[]) =>
  runBuilt(['article', ...words], { command: join(folder, 'dist/whydark.js') });

function schemaFaults(name: string, value: unknown): unknown {
  const fits = new Ajv2020({ strict: true, allErrors: true }).compile(
    JSON.parse(readFileSync(`dist/schema/${name}.schema.json`, 'utf8')),
  );
  return fits(value) ? [] : fits.errors;
}

describe('whydark article', () => {
  it('shows an article by the id of its cause', () => {
    expect(run('lead-out')).toMatchObject({ status: 0, stderr: '', stdout: `${terminalText(LEAD)}\n` });
  });

  it('shows a how-to', () => {
    expect(run('plug').stdout).toMatch(/^Put a plug on\n=+\n\n1\. Strip the end\./);
  });

  it('prints a page of HTML', () => {
    expect(run('lead-out', '--html')).toMatchObject({ status: 0, stdout: htmlDocument(LEAD) });
  });

  it('prints JSON that fits the published schema', () => {
    const printed = JSON.parse(run('lead-out', '--json').stdout);
    expect(printed).toMatchObject({
      format: 1,
      kind: 'cause',
      stage: 'link',
      id: 'lead-out',
      title: 'Lead out',
      markdown: LEAD,
    });
    expect(schemaFaults('article', printed)).toEqual([]);
    expect(schemaFaults('article', { ...printed, extra: 1 })).not.toEqual([]);
  });

  it('lists what there is', () => {
    const { stdout, status } = run();
    expect(status).toBe(0);
    expect(stdout).toBe(
      'Causes\n  lead-out: Lead out\n  supply-off: Supply off\n\nHow-tos\n  plug: Put a plug on\n\nOpen one with: whydark article NAME\n',
    );
    const listed = JSON.parse(run('--json').stdout);
    expect(schemaFaults('articles', listed)).toEqual([]);
    expect(listed.articles[2]).toEqual({ kind: 'how-to', id: 'plug', title: 'Put a plug on' });
  });

  it.each([
    [
      ['lead-ot'],
      'There is no article "lead-ot". Did you mean "lead-out"? "whydark article" lists them all.',
    ],
    [['../../../etc/passwd'], 'There is no article "../../../etc/passwd". "whydark article" lists them all.'],
    [['lead'], 'There is no article "lead".'],
    [['lead-out', 'plug'], 'The command "article" takes nothing more than that: "plug" is left over.'],
    [['lead-out', '--html', '--json'], 'Give --html or --json, not both.'],
    [['--html'], 'The option "--html" needs the name of an article: whydark article NAME --html.'],
  ])('%j is refused in a sentence', (words, sentence) => {
    const { status, stdout, stderr } = run(...words);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(sentence);
  });
});
