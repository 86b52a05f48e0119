import { expect, it } from 'vitest';
import { COMMAND_KEYS, commandsFor } from '../../src/call/commands.js';
import { screenOf } from '../../src/call/screen.js';
import { played, said } from './play.js';

const HERE = said('at-site', 'here');
const ALL = { paste: true, here: true, told: true };
const NONE = { paste: false, here: false, told: false };

it('gives every command a letter of its own', () => {
  const keys = Object.values(COMMAND_KEYS);
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) expect(key).toMatch(/^[a-z]$/);
});

it('offers nothing to go back to before anything was said', async () => {
  const call = await played([]);
  const ids = commandsFor(call, screenOf(call), ALL);
  expect(ids).toEqual(['cant-tell', 'told', 'note', 'paste', 'why', 'other', 'view', 'stop']);
});

it('offers only what the face can do', async () => {
  const call = await played([HERE]);
  const ids = commandsFor(call, screenOf(call), NONE);
  expect(ids).toEqual(['cant-tell', 'back', 'change', 'note', 'why', 'other', 'view', 'stop']);
});

it.each([
  ['site', true],
  ['desk', false],
] as const)('reads the computer it runs on only on site (%s)', async (role, isOffered) => {
  const call = await played([HERE], role);
  expect(commandsFor(call, screenOf(call), ALL).includes('here')).toBe(isOffered);
});

it('at a remedy takes neither a text nor "can\'t tell"', async () => {
  const call = await played([HERE, said('lights', 'off'), said('socket', 'dead'), said('loose', false)]);
  const ids = commandsFor(call, screenOf(call), ALL);
  expect(call.step.kind).toBe('try');
  for (const id of ['cant-tell', 'paste', 'other'] as const) expect(ids).not.toContain(id);
});
