import { fault, type SiteFault } from './fault.js';
import { setOnCamera } from './homes.js';
import { since } from './stories.js';
import { lossy, slow } from './walls.js';

/** How a viewer that takes its time holds one of the camera's places. */
const WATCHES = [
  'for i in $(seq 9000); do',
  'curl -s -m 9 --limit-rate 20k -u admin:gate-17-lantern -o /dev/null http://172.23.40.21/picture; sleep 0.05; done',
].join(' ');

/** Faults of a picture that starts and does not last. */
export const STREAM: readonly SiteFault[] = [
  fault({
    id: 'upload-thin',
    causes: ['upload-too-slow'],
    title: "The site's line takes a sixth of what the picture needs",
    breaks: 'mobile',
    realism: 'real',
    story: since('provider'),
    mends: ['sub-stream', 'lighten-low-picture'],
    plain: { 'low-quality-try': true, 'low-stream-size': 'small' },
    make: (lab) => slow(lab, 'router', 'wan0', 256),
  }),
  fault({
    id: 'upload-thin-low-picture-heavy',
    causes: ['sub-stream-heavy'],
    title: "The site's line is thin, and the low picture is as big as the main one",
    breaks: 'mobile',
    realism: 'told',
    story: since('settings'),
    mends: ['lighten-low-picture'],
    plain: { 'low-quality-try': false, 'low-stream-size': 'heavy' },
    make: (lab) => slow(lab, 'router', 'wan0', 256),
  }),
  fault({
    id: 'half-lost-on-site',
    causes: ['packet-loss-on-way', 'patch-lead'],
    title: 'A bent lead at the switch loses more than half between camera and router',
    breaks: 'both',
    realism: 'variant',
    story: since('building-work', 'today'),
    mends: ['known-good-lead'],
    plain: { 'lead-look': true, 'machine-starts': false, 'speed-set': true, 'when-dark': 'on-and-off' },
    make: (lab) => lossy(lab, 'switch', 'p-camera', 60),
  }),
  fault({
    id: 'places-taken',
    causes: ['too-many-viewers'],
    title: "A wall screen and a recorder hold all of the camera's places",
    breaks: 'wifi',
    realism: 'real',
    story: since('new-device'),
    mends: ['close-other-viewers', 'sub-stream'],
    plain: { 'others-closed': true },
    make: async (lab) => {
      await lab.ip('twin', 'addr add 172.23.40.15/24 dev eth0\n');
      const places = setOnCamera(lab, { maxViewers: 2 });
      // More than there are places: one that ends would leave its place free for a moment.
      const viewers = ['one', 'two', 'three', 'four', 'five'].map((name) => `viewer-${name}`);
      for (const key of viewers) lab.daemon(key, 'twin', ['sh', '-c', WATCHES]);
      return async () => {
        for (const key of viewers) await lab.stop(key);
        await places();
        await lab.run('twin', ['ip', 'addr', 'del', '172.23.40.15/24', 'dev', 'eth0']);
      };
    },
  }),
];
