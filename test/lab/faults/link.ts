import type { Lab, Story } from '../types.js';
import { type FaultDraft, fault, type SiteFault, type Undo } from './fault.js';
import { linkDown, lossy } from './walls.js';

const TODAY: Story = { everWorked: true, changed: 'nothing', when: 'today' };
const BUILDERS: Story = { everWorked: true, changed: 'building-work', when: 'days' };

/** What a person sees of a camera with a plug of its own, whose lead is dead: it still has its lights. */
const OWN_PLUG = { 'fed-by': 'plug', 'camera-lights': 'alive', 'feeding-plug': 'lit' } as const;

/** The lead of the camera carries nothing: both ends show no light. Which part of it is to blame, people see. */
function deadLead(
  draft: Omit<FaultDraft, 'breaks' | 'realism' | 'make'> & {
    readonly plain: Readonly<Record<string, string | boolean>>;
  },
): SiteFault {
  return fault({
    ...draft,
    breaks: 'both',
    realism: 'variant',
    plain: { ...OWN_PLUG, ...draft.plain },
    make: (lab) => linkDown(lab, 'switch', 'p-camera'),
  });
}

/** A box stands between camera and switch and passes nothing on, though its lights at both ends are lit. */
function deafHop(draft: Omit<FaultDraft, 'breaks' | 'realism' | 'make'>): SiteFault {
  return fault({
    ...draft,
    breaks: 'both',
    realism: 'variant',
    make: (lab) => lossy(lab, 'switch', 'p-camera', 100),
  });
}

/** Two sockets of the switch joined by a lead; both ends are slow, or the machine would do nothing else. */
async function ring(lab: Lab): Promise<Undo> {
  await lab.ip(
    'switch',
    [
      'link add name p-ring-a type veth peer name p-ring-b',
      'link set p-ring-a master site',
      'link set p-ring-b master site',
      'link set p-ring-a up',
      'link set p-ring-b up',
      '',
    ].join('\n'),
  );
  for (const end of ['p-ring-a', 'p-ring-b']) {
    await lab.run(
      'switch',
      `tc qdisc replace dev ${end} root tbf rate 2mbit burst 8k latency 100ms`.split(' '),
    );
  }
  // One frame to all is enough; it goes round for ever.
  await lab.run('computer', ['arping', '-c', '2', '-w', '1', '-I', 'eth0', '172.23.40.250'], {
    timeoutMs: 1500,
  });
  return () => lab.ip('switch', 'link del p-ring-a\n');
}

/** Faults of leads, sockets, switches and boxes in between. */
export const LINK: readonly SiteFault[] = [
  deadLead({
    id: 'patch-lead-out',
    causes: ['patch-lead'],
    title: "The camera's short lead has slipped out at the switch",
    story: TODAY,
    mends: ['reseat-lead', 'known-good-lead', 'other-port', 'fetch-address'],
    plain: { 'lead-look': true },
  }),
  deadLead({
    id: 'run-cut',
    causes: ['cable-run'],
    title: 'The run in the wall was cut by the builders',
    story: BUILDERS,
    mends: ['repair-run'],
    plain: {
      'lead-look': false,
      'wire-map-result': 'open',
      'short-lead-try': true,
      'swapped-leads': 'with-lead',
      'spare-camera-try': false,
      'plugs-put-on': false,
    },
  }),
  deadLead({
    id: 'plug-wires-crossed',
    causes: ['plug-badly-made'],
    title: 'A plug was put on anew, with wires in the wrong order',
    story: BUILDERS,
    mends: ['plug-anew', 'repair-run'],
    plain: {
      'lead-look': false,
      'wire-map-result': 'wrong-order',
      'short-lead-try': true,
      'swapped-leads': 'with-lead',
      'spare-camera-try': false,
      'plugs-put-on': true,
    },
  }),
  deadLead({
    id: 'switch-socket-dead',
    causes: ['switch-port-dead'],
    title: 'The socket of the switch is dead',
    story: { everWorked: true, changed: 'storm', when: 'today' },
    mends: ['other-port', 'right-socket'],
    plain: {
      'lead-look': false,
      'wire-map-result': 'good',
      'short-lead-try': true,
      'swapped-leads': 'with-socket',
      'spare-camera-try': false,
      'plugs-put-on': false,
    },
  }),
  deadLead({
    id: 'surge-protector-failed',
    causes: ['run-part-failed'],
    title: 'The surge protector in the run has failed',
    story: { everWorked: true, changed: 'storm', when: 'today' },
    mends: ['bypass-the-box', 'repair-run'],
    plain: { 'lead-look': false, 'between-boxes': 'hop', 'what-box': 'part', 'plugs-put-on': false },
  }),
  deadLead({
    id: 'wifi-renamed-at-router',
    causes: ['wifi-renamed'],
    title: 'The Wi-Fi has a new name; the camera, on Wi-Fi, looks for the old one',
    story: { everWorked: true, changed: 'router', when: 'days' },
    mends: ['rejoin-wifi'],
    plain: { 'camera-type': 'wifi', 'wifi-same': true, 'wifi-bars': 'strong', 'band-on': true },
  }),
  fault({
    id: 'switch-off-router',
    causes: ['switch-island'],
    title: 'The lead from the switch to the router is out',
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'building-work', when: 'today' },
    mends: ['join-the-switch'],
    make: (lab) => linkDown(lab, 'switch', 'p-router'),
  }),
  deafHop({
    id: 'extender-asleep',
    causes: ['uplink-down'],
    title: 'The second switch between camera and router has hung',
    story: TODAY,
    mends: ['wake-the-hop', 'bypass-the-box'],
    plain: { ...OWN_PLUG, 'between-boxes': 'hop', 'what-box': 'switch', 'box-lights': false },
  }),
  deafHop({
    id: 'radio-link-off-aim',
    causes: ['building-link-down'],
    title: 'The radio link to the barn has lost its other end',
    story: { everWorked: true, changed: 'storm', when: 'today' },
    mends: ['mend-building-link'],
    plain: { ...OWN_PLUG, 'between-boxes': 'hop', 'what-box': 'far-link', 'box-lights': false },
  }),
  fault({
    id: 'ring-in-switch',
    causes: ['loop-in-switch'],
    title: 'A lead joins two sockets of the switch',
    breaks: 'both',
    realism: 'real',
    story: { everWorked: true, changed: 'building-work', when: 'today' },
    mends: ['undo-loop'],
    plain: { 'switch-flicker': true },
    make: ring,
  }),
  fault({
    id: 'slide-keeps-sockets-apart',
    causes: ['slide-switch-isolate'],
    title: 'The slide of the switch keeps its sockets apart; only the one to the router is open to all',
    breaks: 'computer',
    realism: 'real',
    story: { everWorked: true, changed: 'not-known', when: 'days' },
    mends: ['slide-back'],
    plain: { 'slide-place': 'moved' },
    make: (lab) => apart(lab, ['p-camera', 'p-computer', 'p-phone', 'p-twin']),
  }),
  fault({
    id: 'lead-beside-motor',
    causes: ['cable-along-mains'],
    title: 'The lead runs beside the wires of a motor; while it runs, more than half is lost',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'building-work', when: 'days' },
    mends: ['away-from-mains'],
    plain: { 'machine-starts': true, 'when-dark': 'on-and-off' },
    make: (lab) => lossy(lab, 'switch', 'p-camera', 60),
  }),
  fault({
    id: 'speed-fixed-at-one-end',
    causes: ['speed-forced'],
    title: 'The speed is fixed at the camera and not at the switch: more than half is lost',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'settings', when: 'days' },
    mends: ['speed-auto'],
    plain: { 'speed-set': false },
    make: (lab) => lossy(lab, 'switch', 'p-camera', 60),
  }),
  fault({
    id: 'wifi-far-from-camera',
    causes: ['weak-wifi-at-camera'],
    title: 'Too little Wi-Fi reaches the camera',
    breaks: 'both',
    realism: 'variant',
    story: { everWorked: true, changed: 'not-known', when: 'weeks' },
    mends: ['bring-wifi-nearer'],
    plain: { 'camera-type': 'wifi', 'wifi-bars': 'weak', 'wifi-same': false, 'when-dark': 'on-and-off' },
    make: (lab) => lossy(lab, 'switch', 'p-camera', 60),
  }),
];

/** Sockets that hear only those that are not among them. */
export async function apart(lab: Lab, ports: readonly string[]): Promise<Undo> {
  const set = async (word: 'on' | 'off') => {
    for (const port of ports)
      await lab.run('switch', ['bridge', 'link', 'set', 'dev', port, 'isolated', word]);
  };
  await set('on');
  return () => set('off');
}
