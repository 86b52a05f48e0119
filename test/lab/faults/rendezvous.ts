import { fault, once, type SiteFault } from './fault.js';
import { holding, setInService, setOnCamera } from './homes.js';
import { openWay, typeInApps } from './opened-way.js';
import { JUST_SO, NEVER, since } from './stories.js';
import { inputWall } from './walls.js';

/** Faults of the service, and of how camera and account stand with it. */
export const RENDEZVOUS: readonly SiteFault[] = [
  fault({
    id: 'service-silent',
    causes: ['service-down'],
    title: 'The service answers nobody',
    breaks: 'both',
    realism: 'real',
    story: JUST_SO,
    mends: ['wait-for-service'],
    plain: { 'other-site': 'dark', 'other-customers': 'dark' },
    make: (lab) => inputWall(lab, 'service', 'meta l4proto { tcp, udp } th dport 443 drop'),
  }),
  fault({
    id: 'service-refuses',
    causes: ['service-down'],
    title: 'The service refuses all, cameras and phones',
    breaks: 'both',
    realism: 'real',
    story: JUST_SO,
    mends: ['wait-for-service'],
    plain: { 'other-site': 'dark', 'other-customers': 'dark' },
    make: (lab) => inputWall(lab, 'service', 'tcp dport 443 reject with tcp reset', 'udp dport 443 reject'),
  }),
  fault({
    id: 'opened-way-to-old-address',
    causes: ['port-forward-stale'],
    title:
      'The app leads to a way opened in the router, which ends at an address that the camera has no more',
    breaks: 'both',
    realism: 'real',
    story: since('settings'),
    mends: ['correct-forwarding', 'replace-forwarding'],
    make: async (lab) => {
      const stale = once(await openWay(lab, '172.23.40.99'));
      lab.defer(stale);
      lab.defer(once(typeInApps(lab, 'numbers')));
      return async () => {
        await stale();
        lab.defer(once(await openWay(lab)));
      };
    },
  }),
  fault({
    id: 'remote-viewing-off',
    causes: ['service-switched-off'],
    title: "Remote viewing is switched off on the camera's page",
    breaks: 'mobile',
    realism: 'real',
    story: since('settings', 'today'),
    mends: ['service-off-and-on'],
    make: async (lab) => setOnCamera(lab, { rendezvousOn: false }),
  }),
  fault({
    id: 'remote-viewing-off-after-update',
    causes: ['service-switched-off'],
    title: 'An update of the camera left remote viewing switched off',
    breaks: 'mobile',
    realism: 'real',
    story: since('firmware'),
    mends: ['service-off-and-on'],
    make: async (lab) => setOnCamera(lab, { rendezvousOn: false }),
  }),
  fault({
    id: 'registration-stale',
    causes: ['stale-service-registration'],
    title: 'The service holds an old key of the camera and refuses it until it enrols anew',
    breaks: 'mobile',
    realism: 'real',
    story: JUST_SO,
    mends: ['service-off-and-on', 'restart-camera', 'long-power-break'],
    plain: { 'other-site': 'fine', 'other-customers': 'fine', 'camera-update-mark': false },
    make: async (lab) => setInService(lab, { cameras: { 'yard-1': 'a key of last month' } }),
  }),
  fault({
    id: 'camera-software-refused',
    causes: ['firmware-too-old'],
    title: 'The service no longer takes cameras with software this old',
    breaks: 'mobile',
    realism: 'told',
    story: since('not-known'),
    mends: ['update-camera'],
    plain: {
      'camera-update-mark': true,
      'update-of-what': 'camera',
      'other-site': 'fine',
      'other-customers': 'fine',
    },
    make: async (lab) => setInService(lab, { cameras: { 'yard-1': 'a key of the new kind' } }),
  }),
  fault({
    id: 'code-of-another-camera',
    causes: ['wrong-code-added'],
    title: 'The app holds the code of another camera, one that is still in its box',
    breaks: 'both',
    realism: 'real',
    story: NEVER,
    mends: ['scan-code-again'],
    plain: { 'account-shown': 'signed-in', 'whose-camera': 'own' },
    make: async (lab) => setInService(lab, { accounts: holding(lab, ['yard-7']) }),
  }),
  fault({
    id: 'camera-of-installer',
    causes: ['bound-to-other-account'],
    title: "The camera is still in the installer's account, and in no other",
    breaks: 'both',
    realism: 'real',
    story: NEVER,
    mends: ['ask-to-unbind'],
    plain: { 'account-shown': 'signed-in', 'whose-camera': 'not-shared', 'add-try': 'taken' },
    make: async (lab) =>
      setInService(lab, {
        accounts: {
          ...holding(lab, []),
          installer: { password: 'known to the installer', cameras: ['yard-1'] },
        },
      }),
  }),
];
