import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { RawAnswer } from '../../src/answers/answer.js';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import type { Call } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { changeable } from '../../src/call/outcome.js';
import { questionsWith } from '../../src/call/questions-with.js';
import { screenOf } from '../../src/call/screen.js';
import { appears } from './appears.js';

const FIELD = '[data-prompt] [data-field]';

/** Makes an event happen on the page as somebody would who has no mouse. `call` is the call before it. */
export async function byKeyboard(page: Page, call: Call, event: CallEvent): Promise<void> {
  const { step } = call;
  switch (event.type) {
    case 'answered':
      return answer(page, call, event.question, event.answer);
    case 'noted':
      await command(page, 'n');
      await type(page, event.text);
      return;
    case 'agreed':
      return pick(page, call, 'agrees');
    case 'kept':
      return pick(page, call, step.kind === 'read-back' ? 'leave' : 'keep');
    case 'tester-dealt':
      return pick(page, call, event.outcome);
    case 'passed-over':
      return event.step.startsWith('try:') ? pick(page, call, 'not-now') : command(page, 'o');
    case 'tried':
      if (event.picture === 'yes') return pick(page, call, 'back');
      await pick(page, call, 'dark');
      await appears(page, '[data-asked^="check:"]');
      return digit(page, ['yes', 'no', 'cant-tell'].indexOf(event.took));
    case 'closed':
      if (event.how === 'stopped') await command(page, 's');
      if (event.how === 'stopped') await appears(page, '[data-asked^="stop:"]');
      return digit(page, 0);
    case 'undone':
      return command(page, 'b');
    default:
      throw new Error(`no keys for ${event.type}`);
  }
}

async function answer(page: Page, call: Call, question: string, given: RawAnswer): Promise<void> {
  const { step } = call;
  if (step.kind === 'ask' && step.question === question) return give(page, call, question, given);
  if (step.kind === 'read-back' && step.question === question) await pick(page, call, 'differs');
  else if (step.kind === 'check-answers' && step.conflict.between.includes(question))
    await pick(page, call, `change:${question}`);
  else if (!call.state.answers.has(question)) {
    const title = call.rules.questions.find(({ id }) => id === question)?.title ?? '';
    await command(page, 'a');
    await appears(page, '#told:focus');
    await page.keyboard.insertText(title);
    await appears(page, '.choices button');
    const at = questionsWith(call.rules, title).findIndex(({ id }) => id === question);
    for (let down = 0; down <= at; down += 1) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
  } else {
    await command(page, 'c');
    await appears(page, '.answers[data-prompt]');
    // The first choice leaves all as it is.
    await digit(page, changeable(call).findIndex(({ id }) => id === question) + 1);
  }
  await appears(page, `[data-asked="change:${question}"]`);
  return give(page, call, question, given);
}

async function give(page: Page, call: Call, id: string, given: RawAnswer): Promise<void> {
  if (given === null) return command(page, 't');
  const question = call.rules.questions.find((one) => one.id === id);
  const parsed = question && parseAnswer(question, given);
  if (!question || !parsed?.ok) throw new Error(`${id}: not an answer`);
  const { value } = parsed;
  const shape = question.answer;
  const choices = 'choices' in shape ? shape.choices.map((one) => one.id) : [];
  switch (value.kind) {
    case 'yes-no':
      return digit(page, value.yes ? 0 : 1);
    case 'choice':
      return digit(page, choices.indexOf(value.id));
    case 'several':
      for (const one of value.ids) await digit(page, choices.indexOf(one));
      return page.keyboard.press('Enter');
    default:
      return type(page, String(given));
  }
}

function pick(page: Page, call: Call, id: string): Promise<void> {
  const { input } = screenOf(call);
  const choices = input.kind === 'choice' ? input.choices : [];
  return digit(
    page,
    choices.findIndex((one) => one.id === id),
  );
}

async function digit(page: Page, at: number): Promise<void> {
  expect(at).toBeGreaterThanOrEqual(0);
  if (at < 10) return page.keyboard.press(String((at + 1) % 10));
  for (let down = 0; down <= at; down += 1) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
}

/** A letter commands; out of a field it takes Esc first. */
async function command(page: Page, letter: string): Promise<void> {
  if (await page.locator(`${FIELD}:focus`).count()) await page.keyboard.press('Escape');
  await page.keyboard.press(letter);
}

async function type(page: Page, text: string): Promise<void> {
  await appears(page, `${FIELD}:focus`);
  await page.keyboard.press('Control+a');
  await page.keyboard.insertText(text);
  await page.keyboard.press('Enter');
}
