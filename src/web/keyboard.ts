import type { Store } from './state.js';

/** Where digits, letters and arrows look for what they stand for. */
const PROMPT = '[data-prompt]';
const CHOICE = `${PROMPT} [data-choice]`;

/** The key of the nth choice, as on the terminal: 1 to 9, then 0; more than ten have none. */
export function keyOf(at: number): string {
  return at < 9 ? String(at + 1) : at === 9 ? '0' : '';
}

/**
 * Digits answer and letters command, as on the terminal, by pressing the button that is there for it. In a field
 * they are text, and Esc leaves the field. What is held with Ctrl, Alt or Meta belongs to the browser.
 */
export function onKey(event: KeyboardEvent, page: Document, store: Store): void {
  if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing || event.defaultPrevented) return;
  if (!isField(event.target)) command(event, page, store.get().letters);
  else if (event.key === 'Escape') page.querySelector<HTMLElement>(`${PROMPT} h2, ${PROMPT} h3`)?.focus();
}

function command(event: KeyboardEvent, page: Document, letters: boolean): void {
  const { target, key } = event;
  const choices = [...page.querySelectorAll<HTMLElement>(CHOICE)];
  const onButton = target instanceof HTMLElement && target.closest('button, a, summary, label') !== null;
  const at = choices.findIndex((_, index) => keyOf(index) === key);
  if (key === 'Escape') press(event, page.querySelector('[data-leave]'));
  else if (key === 'ArrowDown') step(event, choices, 1);
  else if (key === 'ArrowUp') step(event, choices, -1);
  else if (key === 'Enter' && !onButton) enter(event, page);
  else if (letters && at >= 0) press(event, choices[at]);
  else if (letters && /^[a-z?]$/i.test(key))
    press(event, page.querySelector(`[data-key="${key.toLowerCase()}"]`));
}

/** Into the field where there is one to type in, else what is chosen is done. */
function enter(event: KeyboardEvent, page: Document): void {
  const field = page.querySelector<HTMLElement>(`${PROMPT} input, ${PROMPT} textarea`);
  if (field) event.preventDefault();
  if (field) field.focus();
  else press(event, page.querySelector(`${PROMPT} [data-done]`));
}

function step(event: KeyboardEvent, choices: readonly HTMLElement[], by: number): void {
  if (choices.length === 0) return;
  const now = event.target instanceof HTMLElement ? choices.indexOf(event.target) : -1;
  const next = now < 0 ? (by > 0 ? 0 : choices.length - 1) : (now + by + choices.length) % choices.length;
  event.preventDefault();
  choices[next]?.focus();
}

function press(event: KeyboardEvent, button: Element | null | undefined): void {
  if (!(button instanceof HTMLElement)) return;
  event.preventDefault();
  button.click();
}

export function isField(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches('input:not([type=checkbox]), textarea, select');
}
