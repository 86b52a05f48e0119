#!/usr/bin/env node
import { VERSION } from '../call/version.js';

/** Starts at once for `--version`; everything else loads when it is wanted. */
if (process.argv[2] === '--version') process.stdout.write(`${VERSION}\n`);
else {
  const { run } = await import('./run.js');
  process.exitCode = await run(process.argv.slice(2));
}
