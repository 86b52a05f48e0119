import { lines, NO_BREAK } from '../paint.js';

/** A command that can be given at any prompt, by its letter. */
export interface Command {
  readonly key: string;
  readonly id: string;
  readonly title: string;
}

/** What came of a prompt: an answer, or a command. */
export type Reply =
  | { readonly kind: 'one'; readonly id: string }
  | { readonly kind: 'several'; readonly ids: readonly string[] }
  | { readonly kind: 'text'; readonly text: string }
  /** Text of several lines, or with more in it than was asked for. */
  | { readonly kind: 'pasted'; readonly text: string }
  | { readonly kind: 'command'; readonly id: string };

/** The commands, each with its letter, broken into lines between commands only. */
export function commandLine(commands: readonly Command[], columns: number | undefined): string {
  const whole = commands.map(({ key, title }) => `${key} ${title}`.replaceAll(' ', NO_BREAK));
  return lines(whole.join(' · '), columns);
}

/** The command of a pressed key, if there is one. */
export function commandFor(commands: readonly Command[], key: string): Reply | undefined {
  const command = commands.find((one) => one.key === key);
  return command && { kind: 'command', id: command.id };
}
