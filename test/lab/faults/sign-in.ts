import { fault, type SiteFault } from './fault.js';
import { accountsOf, holding, setInApps, setInService, setOnCamera } from './homes.js';
import { JUST_SO, since } from './stories.js';

/** Faults of passwords, accounts and shares. */
export const SIGN_IN: readonly SiteFault[] = [
  fault({
    id: 'camera-has-new-password',
    causes: ['camera-password-changed'],
    title: "The camera's own password was changed; the app keeps the old one",
    breaks: 'both',
    realism: 'real',
    story: since('password', 'today'),
    mends: ['enter-camera-password', 'right-secret', 'recover-camera-password'],
    plain: {
      'which-password': 'camera',
      'password-known': true,
      'account-shown': 'signed-in',
      'key-asked': false,
    },
    make: async (lab) => setOnCamera(lab, { password: 'a new one, chosen yesterday' }),
  }),
  fault({
    id: 'camera-password-lost-to-all',
    causes: ['camera-password-lost'],
    title: "The camera's own password was changed, and nobody knows the new one any more",
    breaks: 'both',
    realism: 'told',
    story: since('password', 'weeks'),
    mends: ['recover-camera-password'],
    plain: {
      'which-password': 'camera',
      'password-known': false,
      'account-shown': 'signed-in',
      'key-asked': false,
    },
    make: async (lab) => setOnCamera(lab, { password: 'one that nobody knows' }),
  }),
  fault({
    id: 'app-in-empty-account',
    causes: ['service-sign-in'],
    title: 'The app is signed in with another account of the family, which holds no camera',
    breaks: 'both',
    realism: 'real',
    story: since('phone'),
    mends: ['sign-in-again'],
    plain: { 'account-shown': 'another', 'whose-camera': 'own' },
    make: async (lab) => {
      const [password] = Object.values(accountsOf(lab)).map((one) => one.password);
      const accounts = setInService(lab, {
        accounts: { ...accountsOf(lab), 'old-house': { password, cameras: [] } },
      });
      const apps = setInApps(lab, { account: 'old-house' });
      return async () => {
        await apps();
        await accounts();
      };
    },
  }),
  fault({
    id: 'account-password-old',
    causes: ['service-sign-in'],
    title: "The account's password was changed on another phone; the app still has the old one",
    breaks: 'both',
    realism: 'real',
    story: since('password', 'today'),
    mends: ['sign-in-again', 'new-service-password', 'right-secret'],
    plain: { 'which-password': 'service', 'account-shown': 'signed-out' },
    make: async (lab) => setInApps(lab, { password: 'the one of last year' }),
  }),
  fault({
    id: 'share-taken-back',
    causes: ['share-withdrawn'],
    title: 'The owner of the camera no longer shares it with this account',
    breaks: 'both',
    realism: 'real',
    story: JUST_SO,
    mends: ['ask-owner-to-share'],
    plain: { 'account-shown': 'signed-in', 'whose-camera': 'shared' },
    make: async (lab) => setInService(lab, { accounts: holding(lab, []) }),
  }),
  fault({
    id: 'camera-password-for-account',
    causes: ['wrong-secret-used'],
    title: "The camera's own password was typed where the app asks for the account's",
    breaks: 'both',
    realism: 'real',
    story: since('phone', 'today'),
    mends: ['right-secret', 'new-service-password'],
    plain: { 'typed-for-what': 'another', 'which-password': 'other', 'account-shown': 'signed-out' },
    make: async (lab) => setInApps(lab, { password: 'gate-17-lantern' }),
  }),
];
