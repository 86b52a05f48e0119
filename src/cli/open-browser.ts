import { spawn } from 'node:child_process';

/** The command that opens an address on this computer; `undefined` where there is no display to open it on. */
export function openerFor(
  platform: NodeJS.Platform,
  env: NodeJS.ProcessEnv,
): { readonly command: string; readonly args: readonly string[] } | undefined {
  // Over a remote shell the browser would open where nobody sits.
  if (env.SSH_CONNECTION !== undefined && env.DISPLAY === undefined) return undefined;
  if (platform === 'darwin') return { command: 'open', args: [] };
  if (platform === 'win32') return { command: 'explorer.exe', args: [] };
  const hasDisplay = (env.DISPLAY ?? '') !== '' || (env.WAYLAND_DISPLAY ?? '') !== '';
  return hasDisplay ? { command: 'xdg-open', args: [] } : undefined;
}

/** Opens an address in the browser. Where that fails nothing is lost: the address has been said. */
export function openBrowser(address: string, platform: NodeJS.Platform, env: NodeJS.ProcessEnv): boolean {
  const opener = openerFor(platform, env);
  if (opener === undefined) return false;
  const child = spawn(opener.command, [...opener.args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
  return true;
}
