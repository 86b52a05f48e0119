#!/usr/bin/env node
import { VERSION } from '../call/version.js';
import { guardOutput } from './streams.js';

let unwritten: string | undefined;
guardOutput(process.stdout, (reason) => {
  unwritten ??= reason;
});
guardOutput(process.stderr, () => undefined);

/** Starts at once for `--version`; everything else loads when it is wanted. */
if (process.argv[2] === '--version') process.stdout.write(`${VERSION}\n`);
else {
  const { run } = await import('./run.js');
  process.exitCode = await run(process.argv.slice(2));
}

process.on('beforeExit', async () => {
  if (unwritten === undefined) return;
  const { toldUnwritten } = await import('./run.js');
  process.exitCode = toldUnwritten(unwritten);
  unwritten = undefined;
});
