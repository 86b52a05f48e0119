import { always, CANT_TELL, type Eye, type Eyes, nobodyKnows, value } from './eye.js';
import { openApp } from './hands.js';

const UNMANAGED = 'the switch has no page and gives no power';

/** Where the scene shows a camera without lights, what hangs on its supply is open. */
function whereAlive(usual: string | boolean): Eye {
  return ({ scene }) => {
    const lights = scene.plain['camera-lights'];
    return lights === undefined || lights === 'alive' ? value(usual) : CANT_TELL;
  };
}

/** Supply is nothing that this world has: a camera on a plug of its own, whose lights are as always. */
export const POWER_EYES: Eyes = {
  'camera-lights': always('alive'),
  'red-glow': whereAlive('glows'),
  'fed-by': always('plug'),
  'feeding-plug': whereAlive('lit'),
  'fitted-labels-say': whereAlive('match'),
  'injector-sockets': always('no-such'),
  'socket-marked': always('no-such'),
  'plug-swapped': always(false),
  'other-things-dark': whereAlive('on'),
  'danger-signs': always(false),
  'machine-starts': always(false),
  'supply-says-volts': always(12),
  'camera-night-watts': always(6),
  'supply-lead-metres': always(2),
  'run-metres': always(20),
  'run-gauge': always(24),
  'labels-match': nobodyKnows('there is no other power plug whose label could be read'),
  'port-watts': nobodyKnows(UNMANAGED),
  'switch-loads': nobodyKnows(UNMANAGED),
  'switch-watts-in-all': nobodyKnows(UNMANAGED),
  'socket-watts-enough': nobodyKnows(UNMANAGED),
  'supply-wire-mm2': nobodyKnows('nothing is printed on the power lead'),
  'night-by-day': async (seat) => {
    const { shows } = await openApp(seat);
    return shows === 'picture' ? value(false) : CANT_TELL;
  },
};
