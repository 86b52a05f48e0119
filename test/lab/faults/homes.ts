import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { BASE } from '../site/manifest.js';
import type { Host, Lab } from '../types.js';
import type { Undo } from './fault.js';

/** The folder that a device of the site keeps its settings in. */
export function homeOf(lab: Lab, host: Host): string {
  return join(BASE, lab.id, host);
}

/** Changes settings that a device reads afresh each time it needs them. Undoing puts back just the named ones. */
export function setIn(file: string, change: Readonly<Record<string, unknown>>): Undo {
  const before = read(file);
  write(file, { ...before, ...change });
  const old = Object.fromEntries(Object.keys(change).map((key) => [key, before[key]]));
  return async () => write(file, { ...read(file), ...old });
}

export function setOnCamera(lab: Lab, change: Readonly<Record<string, unknown>>): Undo {
  return setIn(join(homeOf(lab, 'camera'), 'camera.json'), change);
}

export function setInService(lab: Lab, change: Readonly<Record<string, unknown>>): Undo {
  return setIn(serviceFile(lab), change);
}

/** On both phones, for they share the account. */
export function setInApps(lab: Lab, change: Readonly<Record<string, unknown>>): Undo {
  const undo = (['phone', 'mobile'] as const).map((host) =>
    setIn(join(homeOf(lab, host), 'app.json'), change),
  );
  return async () => {
    for (const one of undo) await one();
  };
}

export interface Account {
  readonly password: string;
  readonly cameras: readonly string[];
}

/** The accounts of the service, by name. */
export function accountsOf(lab: Lab): Readonly<Record<string, Account>> {
  return read(serviceFile(lab)).accounts as Readonly<Record<string, Account>>;
}

/** The accounts, each with these cameras in its list. */
export function holding(lab: Lab, cameras: readonly string[]): Readonly<Record<string, Account>> {
  return Object.fromEntries(
    Object.entries(accountsOf(lab)).map(([name, one]) => [name, { ...one, cameras }]),
  );
}

function serviceFile(lab: Lab): string {
  return join(homeOf(lab, 'service'), 'service.json');
}

function read(file: string): Readonly<Record<string, unknown>> {
  return JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;
}

function write(file: string, value: unknown): void {
  writeFileSync(`${file}.typed`, `${JSON.stringify(value, undefined, 1)}\n`);
  renameSync(`${file}.typed`, file);
}
