import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AppScreen, Carried, Host, Lab, PhoneNetwork, Port, Ran } from '../types.js';
import {
  CARRIER_WITH_IPV6,
  CARRIER_WITHOUT_IPV6,
  carrierDaemons,
  givenToPhone,
  mobileServers,
} from './carrier.js';
import { must, pause } from './exec.js';
import { Ground } from './ground.js';
import { certificateCommands, homeFiles, leaseScript, program, siteDaemons } from './homes.js';
import { remove, sweep } from './manifest.js';
import { labMissing } from './missing.js';
import { CAMERA_MAC, HOSTS, hostScript, linkBatch, SERVERS, TRACKING } from './plan.js';

export { labMissing, sweep };

/** A site of its own, not yet built: `up()` builds it. */
export function makeLab(): Lab {
  return new Site(`wd${randomBytes(2).toString('hex')}`);
}

const USUAL = '172.23.40.21';

const SHOWS: readonly string[] = [
  ...['picture', 'camera-offline', 'waiting', 'no-connection', 'wrong-password', 'empty-list', 'stutters'],
];

const SOCKETS: Readonly<Record<Port, readonly [Host, string]>> = {
  camera: ['switch', 'p-camera'],
  computer: ['switch', 'p-computer'],
  router: ['switch', 'p-router'],
  internet: ['router', 'wan0'],
};

class Site extends Ground implements Lab {
  private carried: Carried = 'ipv4';

  async up(): Promise<void> {
    this.built = true;
    this.record();
    for (const host of HOSTS) {
      mkdirSync(this.home(host), { recursive: true });
      mkdirSync(join('/etc/netns', this.namespace(host)), { recursive: true });
      this.resolv(host, ...SERVERS[host]);
    }
    for (const [host, name, text] of homeFiles(this.folder)) writeFileSync(join(this.home(host), name), text);
    const certificates = (async () => {
      for (const argv of certificateCommands(this.folder)) await must(argv);
    })();
    await must(['ip', '-batch', '-'], { input: linkBatch((host) => this.namespace(host)) });
    await Promise.all([
      certificates,
      ...HOSTS.map((host) => must(this.inside(host, ['sh']), { input: hostScript(host) })),
    ]);
    for (const [key, host, argv] of siteDaemons(this.folder)) {
      if (key !== 'camera') this.daemons.start(key, { host, argv, env: {} });
    }
    await Promise.all([
      this.listening('service', 443),
      this.listening('service', 3478),
      this.listening('service', 53),
      this.listening('router', 53),
      this.listening('router', 67),
      this.listening('router', 80),
    ]);
    for (const [key, host, argv] of siteDaemons(this.folder)) {
      if (key === 'camera') this.daemons.start(key, { host, argv, env: {} });
    }
    await this.quiet('phone', ['ip', 'link', 'set', 'wwan0', 'down']);
    await Promise.all([this.dhcp('computer'), this.dhcp('phone'), this.listening('camera', 80)]);
    // A bridge port may take a second until it forwards: the first registration can be too early.
    for (let left = 4; !(await this.cameraFresh()); left--) {
      if (left === 0)
        throw new Error(`${this.id}: the camera is not registered: ${JSON.stringify(this.status())}`);
    }
    this.log = [];
  }

  async down(): Promise<void> {
    if (!this.built) return;
    remove(this.manifest());
    this.built = false;
    this.undo = [];
    this.carried = 'ipv4';
  }

  async dhcp(host: 'computer' | 'phone' | 'twin'): Promise<Ran> {
    const name = host === 'phone' ? 'wlan0' : 'eth0';
    await this.quiet(host, ['ip', '-4', 'addr', 'flush', 'dev', name]);
    this.resolv(host);
    const client = ['busybox', 'udhcpc', '-f', '-n', '-q', '-t', '3', '-T', '1', '-i', name];
    const argv = [...client, '-x', `hostname:${host}`, '-s', leaseScript];
    const ran = await this.run(host, argv, { timeoutMs: 5000 });
    // What systems fall back to without a lease (RFC 3927); the real waiting for it is left out.
    if (ran.code !== 0) {
      const last = host === 'computer' ? '31.7' : host === 'phone' ? '51.9' : '41.8';
      await this.quiet(host, ['ip', 'addr', 'add', `169.254.${last}/16`, 'brd', '+', 'dev', name]);
    }
    return ran;
  }

  async phoneTo(network: PhoneNetwork): Promise<void> {
    if (network === 'mobile') {
      await this.quiet('phone', [
        'sh',
        '-c',
        `ip -4 addr flush dev wlan0; ip link set wlan0 down; ${givenToPhone('phone', this.carried)}`,
      ]);
      this.resolv('phone', ...mobileServers(this.carried));
      return this.upAndRunning('phone', 'wwan0');
    }
    const bridge = network === 'wifi' ? 'site' : 'guest';
    await this.quiet('phone', [
      'sh',
      '-c',
      'ip addr flush dev wwan0 scope global; ip link set wwan0 down; ip link set wlan0 up',
    ]);
    await this.quiet('switch', ['ip', 'link', 'set', 'p-phone', 'master', bridge]);
    await this.upAndRunning('phone', 'wlan0');
    await this.dhcp('phone');
  }

  async carrier(gives: Carried): Promise<void> {
    const daemons = carrierDaemons(this.home('carrier'));
    const [had, has] = [this.carried !== 'ipv4', gives !== 'ipv4'];
    this.carried = gives;
    if (has && !had) {
      this.defer(() => this.carrier('ipv4'));
      await must(this.inside('carrier', ['sh']), { input: CARRIER_WITH_IPV6 });
      for (const [key, argv] of daemons) this.daemon(key, 'carrier', argv);
      await this.listening('carrier', 53);
      await this.upAndRunning('carrier', 'nat64');
    }
    const wwan = await this.quiet('phone', ['cat', '/sys/class/net/wwan0/operstate']);
    for (const phone of ['mobile', 'phone'] as const) {
      if (phone === 'phone' && wwan.stdout.trim() !== 'up') continue;
      await must(this.inside(phone, ['sh', '-c', givenToPhone(phone, gives)]));
      this.resolv(phone, ...mobileServers(gives));
    }
    if (has || !had) return;
    for (const [key] of daemons) await this.stop(key);
    await this.quiet('carrier', ['sh', '-c', CARRIER_WITHOUT_IPV6]);
  }

  /** Waits a moment for a link to come up; one that doesn't is left so. */
  private async upAndRunning(host: Host, name: string): Promise<void> {
    for (let round = 0; round < 30; round++) {
      const seen = await this.quiet(host, ['cat', `/sys/class/net/${name}/operstate`]);
      if (seen.stdout.trim() === 'up') return;
      await pause(40);
    }
  }

  async cameraNetwork(): Promise<string> {
    return (await this.quiet('camera', program('camera', 'network'))).stdout;
  }

  async cameraPage(from: 'computer' | 'phone'): Promise<string | undefined> {
    for (const address of await this.knownAddresses()) {
      const got = await this.run(from, ['curl', '-sS', '--max-time', '2', `http://${address}/`]);
      if (got.code === 0 && got.stdout.includes('- status')) return got.stdout;
    }
    return undefined;
  }

  /** The address people on site know the camera by, and the one the router lists it with where that is another. */
  private async knownAddresses(): Promise<readonly string[]> {
    const seen = await this.quiet('router', ['ip', '-4', 'neigh', 'show', 'dev', 'lan0']);
    const lines = seen.stdout.split('\n').filter((line) => line.includes(CAMERA_MAC));
    const listed = lines.map((line) => line.split(' ')[0] ?? '').filter((address) => address !== USUAL);
    return [USUAL, ...listed.slice(0, 1)];
  }

  async app(phone: 'phone' | 'mobile'): Promise<AppScreen> {
    const ran = await this.run(phone, program('app'), { timeoutMs: 6000 });
    try {
      const screen = JSON.parse(ran.stdout) as AppScreen;
      if (SHOWS.includes(screen.shows)) return screen;
    } catch {
      // The app was ended, or printed nothing.
    }
    if (ran.code !== 0 && !ran.timedOut) throw new Error(`the app failed: ${ran.stderr}`);
    return { shows: 'waiting', way: 'none', words: 'The app does not respond.' };
  }

  async light(port: Port): Promise<'lit' | 'dark'> {
    const [host, name] = SOCKETS[port];
    const seen = await this.quiet(host, ['cat', `/sys/class/net/${name}/carrier`]);
    return seen.stdout.trim() === '1' ? 'lit' : 'dark';
  }

  async restart(device: 'camera' | 'router' | 'box' | 'phone' | 'switch'): Promise<void> {
    const own = siteDaemons(this.folder).filter(([, host]) => host === device);
    for (const [key] of own) await this.daemons.stop(key);
    if (device === 'router') rmSync(join(this.home('router'), 'leases'), { force: true });
    await this.forget(device);
    for (const [key] of own) await this.daemons.again(key);
    if (device === 'camera') await this.ready();
    if (device === 'router') {
      await Promise.all([53, 67, 80].map((port) => this.listening('router', port).catch(() => {})));
    }
    if (device === 'switch')
      await this.quiet('switch', [
        'sh',
        '-c',
        'for b in site guest; do ip link set $b type bridge fdb_flush; done',
      ]);
    if (device === 'phone') {
      const up = await this.quiet('phone', ['cat', '/sys/class/net/wlan0/operstate']);
      if (up.stdout.trim() === 'up') await this.dhcp('phone');
    }
  }

  /** Empties what a device holds only while it has power. */
  private async forget(host: Host): Promise<void> {
    const tracked = TRACKING.includes(host) ? 'conntrack -F 2>/dev/null; ' : '';
    await this.quiet(host, [
      'sh',
      '-c',
      `${tracked}ip neigh flush all 2>/dev/null; ip route flush cache; true`,
    ]);
  }

  async restore(): Promise<void> {
    const failed: unknown[] = [];
    for (let undo = this.undo.pop(); undo !== undefined; undo = this.undo.pop()) {
      try {
        await undo();
      } catch (error) {
        failed.push(error);
      }
    }
    await this.asAtFirst();
    await Promise.all(HOSTS.map((host) => this.forget(host)));
    let unwell = 'not looked at';
    for (const end = Date.now() + 12_000; Date.now() < end; ) {
      await this.phoneTo('wifi');
      await this.dhcp('computer');
      unwell = await this.unwell();
      if (unwell === '') break;
      await pause(200);
    }
    if (unwell !== '') throw new AggregateError(failed, `${this.id} is not healthy: ${unwell}`);
    if (failed.length > 0) throw new AggregateError(failed, `${this.id}: an undo failed`);
  }

  /** Puts settings files back, starts daemons of the site that ended or run otherwise than at first, ends others. */
  private async asAtFirst(): Promise<void> {
    const stale = new Set<Host>();
    for (const [host, name, text] of homeFiles(this.folder)) {
      const file = join(this.home(host), name);
      if (existsSync(file) && readFileSync(file, 'utf8') === text) continue;
      writeFileSync(file, text);
      stale.add(host);
    }
    const own = siteDaemons(this.folder);
    const foreign = this.daemons.keys().filter((key) => own.every(([mine]) => mine !== key));
    for (const key of foreign) await this.daemons.stop(key);
    for (const [key, host, argv] of own) {
      const last = this.daemons.last.get(key);
      const same = last?.argv.join(' ') === argv.join(' ') && Object.keys(last.env).length === 0;
      // The camera always starts anew: its page tells of the last error.
      if (this.daemons.runs(key) && same && !stale.has(host) && key !== 'camera') continue;
      await this.daemons.stop(key);
      this.daemons.start(key, { host, argv, env: {} });
    }
  }

  /** What is not as in a healthy site, in words, or ''. */
  private async unwell(): Promise<string> {
    if (!(await this.cameraFresh())) return 'the camera is not registered';
    const status = this.status();
    if (status.udp !== 'ok' || status.tcp !== 'ok') return JSON.stringify(status);
    const [wifi, mobile, page] = await Promise.all([
      this.app('phone'),
      this.app('mobile'),
      this.cameraPage('computer'),
    ]);
    if (wifi.shows !== 'picture' || wifi.way !== 'direct') return `on Wi-Fi: ${JSON.stringify(wifi)}`;
    if (mobile.shows !== 'picture' || mobile.way !== 'punched')
      return `on mobile data: ${JSON.stringify(mobile)}`;
    return page === undefined ? 'the page does not open on the computer' : '';
  }
}
