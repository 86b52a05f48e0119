import type { Lab } from '../types.js';

/** A lab whose looks are taken once, as people take them: what was seen holds until something was done. */
export interface Remembering {
  readonly lab: Lab;
  readonly forget: () => void;
}

/** Looks that change nothing are remembered; whatever changes the site makes all of them forgotten. */
export function remembering(lab: Lab): Remembering {
  const seen = new Map<string, unknown>();
  const forget = (): void => seen.clear();
  const once = <T>(key: string, take: () => Promise<T>): Promise<T> => {
    const known = seen.get(key) as Promise<T> | undefined;
    if (known) return known;
    const taken = take();
    seen.set(key, taken);
    return taken;
  };
  const changing =
    <A extends unknown[], T>(act: (...words: A) => Promise<T>) =>
    async (...words: A): Promise<T> => {
      forget();
      try {
        return await act(...words);
      } finally {
        forget();
      }
    };
  return {
    forget,
    lab: {
      id: lab.id,
      up: () => lab.up(),
      down: () => lab.down(),
      run: (host, argv, options) =>
        once(`run ${host} ${JSON.stringify([argv, options])}`, () => lab.run(host, argv, options)),
      nft: changing((host, rules) => lab.nft(host, rules)),
      ip: changing((host, batch) => lab.ip(host, batch)),
      daemon: (key, host, argv, env) => {
        forget();
        lab.daemon(key, host, argv, env);
      },
      stop: changing((key) => lab.stop(key)),
      listening: (host, port) => lab.listening(host, port),
      dhcp: changing((host) => lab.dhcp(host)),
      resolv: (host, ...servers) => {
        forget();
        lab.resolv(host, ...servers);
      },
      phoneTo: changing((network) => lab.phoneTo(network)),
      carrier: changing((gives) => lab.carrier(gives)),
      cameraNetwork: () => once('camera network', () => lab.cameraNetwork()),
      // A page tells of its moment: what the camera found out since stands on the next one.
      cameraPage: (from) =>
        once(`camera page ${from} ${Math.floor(Date.now() / 2000)}`, () => lab.cameraPage(from)),
      app: (phone) => once(`app ${phone}`, () => lab.app(phone)),
      light: (port) => once(`light ${port}`, () => lab.light(port)),
      restart: changing((device) => lab.restart(device)),
      cameraFresh: () => lab.cameraFresh(),
      defer: (undo) => lab.defer(undo),
      restore: changing(() => lab.restore()),
      takeLog: () => lab.takeLog(),
    },
  };
}
