import type { Lab } from '../types.js';
import type { Undo } from './fault.js';

/** What stands on the camera's network page. `onlink`: a system that takes any gateway, as some small ones do. */
export interface CameraSettings {
  readonly address: string;
  readonly gateway: string | undefined;
  readonly onlink: boolean;
  readonly dns: readonly string[];
}

/** The camera of the healthy site. */
export const GOOD: CameraSettings = {
  address: '172.23.40.21/24',
  gateway: '172.23.40.1',
  onlink: false,
  dns: ['172.23.40.1'],
};

const typed = new WeakMap<Lab, CameraSettings>();

/**
 * Types some lines of the camera's network page and saves it. Undoing puts just these lines back, so that two faults
 * on one page can be mended one by one.
 */
export async function typeOnCamera(lab: Lab, lines: Partial<CameraSettings>): Promise<Undo> {
  await save(lab, { ...(typed.get(lab) ?? GOOD), ...lines });
  return async () => {
    const good = Object.fromEntries(
      Object.keys(lines).map((key) => [key, GOOD[key as keyof CameraSettings]]),
    );
    await save(lab, { ...(typed.get(lab) ?? GOOD), ...good });
  };
}

async function save(lab: Lab, settings: CameraSettings): Promise<void> {
  typed.set(lab, settings);
  const { address, gateway, onlink, dns } = settings;
  await lab.ip('camera', 'addr flush dev eth0\nlink set eth0 up\n');
  await lab.run('camera', ['ip', 'addr', 'add', address, 'brd', '+', 'dev', 'eth0']);
  if (gateway !== undefined) {
    const way = ['ip', 'route', 'replace', 'default', 'via', gateway, 'dev', 'eth0'];
    await lab.run('camera', onlink ? [...way, 'onlink'] : way);
  }
  lab.resolv('camera', ...dns);
  await lab.run('camera', ['ip', 'neigh', 'flush', 'all']);
}
