import { always, type Eyes, nobodyKnows, value } from './eye.js';
import { answersByWire, usedAddress } from './hands.js';
import { phoneOfCall } from './phones.js';

const HIGH = 'the camera hangs high, there is no ladder, and nobody is sent up';

/** What is at hand, and what would take things that are not. */
export const KIT_EYES: Eyes = {
  // Where somebody away misses the picture, the phone at hand is a second one.
  kit: async (seat) =>
    value((await phoneOfCall(seat)) === 'mobile' ? ['patch-lead', 'second-phone'] : ['patch-lead']),
  'camera-type': always('wired'),
  'between-boxes': always('direct'),
  'what-box': nobodyKnows('there is no box in between'),
  'box-lights': nobodyKnows('there is no box in between'),
  'short-lead-try': nobodyKnows(HIGH),
  'spare-camera-try': nobodyKnows('there is no spare camera'),
  'wire-map-result': nobodyKnows('there is no tester for wires'),
  'volts-at-camera': nobodyKnows('there is no tester for power'),
  'laptop-in-place': nobodyKnows('the computer stands on a desk, and no laptop is at hand'),
  'swapped-leads': nobodyKnows('there is no other camera to swap with'),
  'others-unplugged': nobodyKnows('there is no other camera to unplug'),
  'second-phone-try': nobodyKnows('one of the two phones is away, so they are never on the same Wi-Fi'),
  'answers-while-unplugged': async (seat) => {
    const before = await seat.run('switch', ['ip', '-o', 'link', 'show', 'dev', 'p-camera']);
    const wasIn = !/\bstate DOWN\b|<(?![^>]*\bUP\b)[^>]*>/.test(before.stdout);
    const wasLit = (await seat.lab.light('camera')) === 'lit';
    if (wasIn) await seat.lab.ip('switch', 'link set dev p-camera down');
    seat.saw('camera', 'pulls the network lead', wasIn ? 'out' : 'it was dark before');
    try {
      await seat.run('computer', ['ip', 'neigh', 'flush', 'all']);
      return value((await answersByWire(seat, usedAddress())).length > 0);
    } finally {
      if (wasIn) {
        await seat.lab.ip('switch', 'link set dev p-camera up');
        if (wasLit) await settled(seat);
      }
    }
  },
};

/** A socket takes up to a second after the click until it passes anything on. */
async function settled(seat: Parameters<Eyes[string]>[0]): Promise<void> {
  for (let turn = 0; turn < 15; turn++) {
    if ((await seat.lab.light('camera')) === 'lit') break;
    await new Promise((done) => setTimeout(done, 200));
  }
  await new Promise((done) => setTimeout(done, 1000));
  seat.saw('camera', 'puts the network lead back', await seat.lab.light('camera'));
}
