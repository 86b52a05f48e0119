import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { advance, diagnosisOf, openCall } from '../../src/call/call.js';
import type { CallEvent, CallHeader } from '../../src/call/events.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { VERSION } from '../../src/call/version.js';
import { readRecord } from '../../src/files/record.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { appears } from './appears.js';
import { browser, FILE, watch } from './browser.js';
import { loaded } from './built.js';
import { byKeyboard } from './drive.js';

const ROOT = 'transcripts-demo';
/** The recorded calls, by the names of their folders. */
export const DEMO_CALLS = readdirSync(ROOT).filter((name) => existsSync(`${ROOT}/${name}/caller.json`));

/** Several things as a face gives them: in the order of their list. */
function asTicked(rules: RuleBase, event: CallEvent): CallEvent {
  const shape = event.type === 'answered' && rules.questions.find(({ id }) => id === event.question)?.answer;
  if (event.type !== 'answered' || !shape || shape.type !== 'several' || !Array.isArray(event.answer))
    return event;
  const given = event.answer;
  const answer = shape.choices.map(({ id }) => id).filter((id) => given.includes(id));
  return answer.join() === given.join() ? event : { ...event, answer };
}

/** The kept record of a call that has just been opened, so that its id and its time are those of the demo. */
function kept(header: CallHeader): [string, string] {
  return [`whydark.call.${header.id}`, `${JSON.stringify(header)}\n`];
}

/**
 * Tests that these calls, held on the page by keyboard alone, give the verdict and the ticket of the terminal. They
 * are told to several files, so that each core has some.
 */
export function holdDemoCalls(calls: readonly string[]): void {
  const { context } = browser();

  afterEach(async () => {
    for (const page of context().pages()) {
      if (page.url() === FILE) await page.evaluate(() => localStorage.clear());
      await page.close();
    }
    await context().newPage();
  });

  test.each(calls)(
    '%s, by keyboard alone, gives the verdict and the bytes of the ticket',
    async (name) => {
      const { rules, digest } = loaded();
      // That the record is what the terminal makes of the caller today is held in test/build.
      const { header, events } = readRecord(`${ROOT}/${name}/record.jsonl`, VERSION);
      const wasSorted = (event: CallEvent): boolean => asTicked(rules, event) !== event;
      const page = await context().newPage();
      page.setDefaultTimeout(5000);
      const { faults, requests } = watch(page);
      await page.clock.setFixedTime(new Date(header.opened));
      await page.addInitScript(([key, text]) => {
        if (!localStorage.getItem(key)) localStorage.setItem(key, text);
      }, kept(header));
      await page.goto(FILE);
      await page.keyboard.press('3');
      await appears(page, '[data-entries="0"]');
      let call = await openCall(rules, digest, header);
      for (const event of events) {
        await page.clock.setFixedTime(new Date(event.at));
        await byKeyboard(page, call, event);
        const next = await advance(call, asTicked(rules, event));
        if (!next.ok) throw new Error(next.problem.id);
        call = next.value;
        await appears(page, `[data-entries="${call.state.events.length}"]`);
      }
      expect(await page.locator('.verdict').textContent()).toContain(diagnosisOf(call).verdict.says);
      const shown = await page.locator('[data-ticket]').textContent();
      expect(shown).toBe(ticketOf(call));
      // Of several things ticked a face gives the order of the list, a written caller that of the telling.
      if (!events.some(wasSorted)) expect(shown).toBe(readFileSync(`${ROOT}/${name}/ticket.md`, 'utf8'));
      expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([]);
      expect(faults).toEqual([]);
      expect(requests).toEqual([FILE]);
      await page.close();
    },
    120_000,
  );
}
