import type { Writable } from 'node:stream';

/**
 * Goes on where nobody reads on (`whydark questions | head -1`): what is left is written to nobody. Any other
 * failure to write, a full disk for one, is told once, and the command then ends with status 3.
 */
export function guardOutput(stream: Writable, told: (reason: string) => void): void {
  let failed = false;
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE' || error.code === 'ERR_STREAM_DESTROYED') return;
    if (!failed) told(error.code ?? error.message);
    failed = true;
  });
}
