/** Typed measures that cannot be used, and the worked lines of the sums about power. */
export const POWER_WORDS = {
  'measure.about':
    '"{text}" leaves open how far off it may be. Type the least and the most it can be, such as 60-90 m.',
  'measure.wire-bare':
    '"{text}" can be a gauge or a cross-section. Type the unit as well, such as 24 AWG or 0.75 mm2.',
  'measure.wire-diameter':
    '"{text}" is a diameter. Type the cross-section in mm2 or the gauge in AWG, as it is printed on the cable.',
  'measure.port-number': '"{text}" names no port. Begin with the number of the port, such as 3 class 2 5 W.',
  'measure.port-twice': 'Port {port} is named twice. Type every port once.',
  'measure.port-unclear':
    '"{text}" cannot be read as one port. Type its number, its class, its watts and its priority, such as 3 class 2 5 W high. Leave out what is not known.',
  'measure.other-unclear':
    '"{text}" cannot be read as one camera. Type its length of cable and what it takes, such as 25 m 0.5 A.',

  'power.poe-title': 'Power over a network cable',
  'power.budget-title': 'Power budget of a switch',
  'power.dc-title': 'Low-voltage supply over two wires',

  'power.ask-length': 'How long is the cable, one way? A range such as 60-90 m will do.',
  'power.ask-camera-class': 'Which PoE class stands on the label of the camera?',
  'power.ask-camera-watts': 'How many watts does the camera take at most, infrared on?',
  'power.ask-source-kind': 'Is the port or injector of the 802.3 kind, or passive?',
  'power.ask-source-volts': 'How many volts does the port or injector give?',
  'power.ask-port-watts': 'How many watts can the port or injector give?',
  'power.ask-least-volts': 'What are the fewest volts the camera works with?',
  'power.ask-wire': 'How thick is one wire of the cable, as printed on it: 24 AWG, 0.75 mm2?',
  'power.ask-metal': 'Are the wires of copper, or of aluminium clad with copper (CCA)?',
  'power.ask-temperature': 'How warm is it where the cable lies?',
  'power.ask-budget': 'How many watts can the switch give to all its ports together?',
  'power.ask-ports':
    'What hangs on each port? Number, class, watts and priority, such as 1 class 3 6.4 W; 2 class 4 high.',
  'power.ask-next': 'Which camera is to come? Class and watts, such as class 3 9 W.',
  'power.ask-counts': 'Does the switch count the class of a camera, or what it draws?',
  'power.ask-night-watts':
    'How many watts does infrared add to each reading? 0 if they were read in the dark.',
  'power.ask-when-full': 'What does the switch do when its budget is used up?',
  'power.ask-supply-volts': 'How many volts does the supply give?',
  'power.ask-day': 'What does the camera take by day, in A or W?',
  'power.ask-night': 'What does the camera take at night, infrared on, in A or W?',
  'power.ask-rating': 'What can the supply give, in A or W?',
  'power.ask-others':
    'Which other cameras are on the same supply? Length of cable and what each takes at night, such as 25 m 0.5 A; 40 m 6 W.',
  'power.ask-layout': 'Does each camera have its own cable, or are they along one cable?',

  'power.class-0': 'class 0',
  'power.class-1': 'class 1',
  'power.class-2': 'class 2',
  'power.class-3': 'class 3',
  'power.class-4': 'class 4',
  'power.class-5': 'class 5',
  'power.class-6': 'class 6',
  'power.class-7': 'class 7',
  'power.class-8': 'class 8',
  'power.standard': 'of the 802.3 kind (af, at or bt)',
  'power.passive': 'passive',
  'power.copper': 'copper',
  'power.clad': 'copper-clad aluminium (CCA)',
  'power.by-class': 'the class of each camera',
  'power.by-drawn': 'what each camera draws',
  'power.full-priority': 'lets ports go by priority',
  'power.full-newest': 'refuses the newest camera',
  'power.layout-star': 'each on its own cable',
  'power.layout-along': 'all along one cable',

  'power.kind-standard':
    'Port and camera are taken to be of the 802.3 kind: the port asks for a 25 kohm signature before it gives power (IEEE 802.3).',
  'power.kind-passive':
    'The source is passive: it gives its volts at once and asks nothing first. No published standard covers it.',
  'power.passive-labels':
    'Volts, polarity and pins on both labels must match. Numbers alone cannot show that they do.',
  'power.kind-mixed':
    'One end is passive and the other is of the 802.3 kind. They do not work together, and the camera may be damaged (common practice, no source).',
  'power.kind-source-unsure':
    'It is not known whether the source is of the 802.3 kind or passive. The sum takes it for 802.3.',
  'power.kind-camera-unsure': 'It is not known whether the camera is made for a passive source.',
  'power.kind-volts-disagree':
    'A port of the 802.3 kind has 44 to 57 V (IEEE 802.3). These volts are others: read the label again, or the port is faulty.',
  'power.passive-if': 'If either label says passive: stop, and do not plug it in until both labels match.',
  'power.passive-stop': 'Stop, and do not plug it in until both labels match.',

  'power.class':
    'Class {class} (type {type}): the port has {portVolts} V and gives up to {portWatts} W. The camera may take {cameraWatts} W and works from {cameraVolts} V (IEEE 802.3 clauses 33 and 145, as restated in published overviews).',
  'power.class-unknown':
    'Neither the class nor the watts are known. Classes {classes} and 1 to {watts} W are reckoned with (common practice, no source).',
  'power.class-by-watts': 'The class is not known. Cameras of {watts} W are taken for class {classes}.',
  'power.over-class':
    'The camera takes more than the {watts} W of its class. One of the two was read wrongly.',
  'power.port-unknown':
    'It is not known what the port can give. At worst it is one of {watts} W, which is not enough for class {class}.',
  'power.port-below-class': 'The port gives {watts} W. Class {class} is meant for a port of {needs} W.',

  'power.length-unknown':
    'The length is not known: {metres} m are reckoned with (common practice, no source).',
  'power.wire-unknown': 'The wire is not known: {wire} are reckoned with (common practice, no source).',
  'power.temperature-unknown':
    'The temperature is not known: {celsius} °C are reckoned with (common practice, no source).',
  'power.metal-copper':
    'Copper has 1.724e-8 ohm m at 20 °C (IEC 60028) and 0.00393 of that more for each degree above.',
  'power.metal-clad':
    'Copper-clad aluminium conducts 62.9 to 64.4 % as well as copper (ASTM B566, as restated in a wire data sheet), and has 0.00403 more for each degree above 20 °C (aluminium, power engineering handbook).',
  'power.metal-unknown':
    'The metal is not known. At best it is copper: 1.724e-8 ohm m at 20 °C (IEC 60028), 0.00393 more for each degree. At worst it is clad aluminium: 62.9 % as good (ASTM B566, as restated in a wire data sheet), 0.00403 more for each degree.',
  'power.conductor': 'One wire of {wire} at {celsius} °C has {ohms} ohm per km.',
  'power.size-gauge':
    'A gauge n is 0.127 mm × 92^((36 − n) / 39) thick (ASTM B258). The low end is solid wire, the high end is stranded: 2.6 % more (NEC chapter 9 table 8). Joints and plugs come on top.',
  'power.size-metric':
    'The low end is the full cross-section, the high end the most a flexible wire may have (IEC 60228, classes 5 and 6). Joints and plugs come on top.',
  'power.loop-two-pairs':
    'Two pairs carry power: two wires side by side each way, so the loop has as much as one wire of that length (circuit theory, from memory).',
  'power.loop-four-pairs':
    'Four pairs carry power: four wires side by side each way, so the loop has half as much as one wire of that length (circuit theory, from memory).',
  'power.loop-two-wires':
    'The current goes out and back, so the loop has twice as much as one wire of that length.',

  'power.end-best': 'At best, with every number at its kindest:',
  'power.end-worst': 'At worst, with every number at its hardest:',
  'power.point-watts':
    '{sourceVolts} V over a loop of {ohms} ohm: {amps} A flow, {drop} V and {loss} W stay on the cable, {volts} V and {watts} W reach the camera. It takes constant power: R I² − V I + P = 0, the smaller root.',
  'power.point-amps':
    '{sourceVolts} V over a loop of {ohms} ohm: {amps} A flow, {drop} V and {loss} W stay on the cable, {volts} V and {watts} W reach the camera. Drop = R I, the current held constant.',
  'power.no-point-watts':
    '{sourceVolts} V over a loop of {ohms} ohm let through {most} W at most: V² / (4 R). The camera would take {watts} W, so it cannot run.',
  'power.no-point-amps':
    '{sourceVolts} V over a loop of {ohms} ohm cannot carry {amps} A. All the volts would stay on the cable.',
  'power.volts-above': 'That is {volts} V more than the {least} V the camera needs.',
  'power.volts-below': 'That is {volts} V less than the {least} V the camera needs.',
  'power.source-enough': 'The source gives {watts} W. It can give {most} W.',
  'power.source-over':
    'The source would have to give {watts} W. It can give {most} W only, and may switch off.',
  'power.longest':
    'With all else at its worst, the longest run of this cable that still works is {metres} m.',
  'power.longest-none': 'With all else at its worst, no run works, however short.',
  'power.longest-shared': 'That is with the other cameras where they are now.',
  'power.channel':
    'Data over copper is laid out for {metres} m: 90 m of fixed cable and 10 m of leads (TIA-568). Beyond that the link may fail however good the power is.',
  'power.thinnest':
    'Thinnest wire on the market that still works at worst: {metric} or {american} (sizes of IEC 60228 and ASTM B258).',
  'power.thinnest-none': 'No wire up to 6 mm² or 10 AWG makes it work at worst.',

  'power.supply-volts-unknown':
    'The volts of the supply are not known: 9 to 26 V are reckoned with (common practice, no source).',
  'power.rating-unknown':
    'It is not known what the supply can give: 0.5 to 5 A are reckoned with (common practice, no source).',
  'power.least-volts-unknown':
    'It is not known what the camera works down to: 10 to 25 % under the volts of the supply are reckoned with (common practice, no source).',
  'power.night-draw-unknown':
    'It is not known what the camera takes at night: as much as by day and up to 8 W more are reckoned with (common practice, no source).',
  'power.draw-unknown':
    'It is not known what the camera takes: 1.5 to 15 W are reckoned with (common practice, no source).',
  'power.along': 'The cameras are along one cable: each piece of it carries the current of all behind it.',
  'power.star': 'Each camera has its own cable from the supply.',
  'power.layout-unknown':
    'It is not known how the cameras are wired. At best each has its own cable, at worst they are along one.',
  'power.by-day': 'By day:',
  'power.by-night': 'At night, infrared on:',
  'power.shared-enough': 'The camera at {metres} m takes {amps} A and gets {volts} V. It needs {least} V.',
  'power.shared-short': 'The camera at {metres} m gets {volts} V. It needs {least} V, so it is too little.',
  'power.shared-none': 'The cable cannot feed all {count} cameras. Their volts would collapse.',
  'power.dusk':
    'By day it is fine. It is the infrared at dusk that may be too much: then the camera restarts again and again.',

  'power.budget': 'The switch can give {watts} W to all ports together.',
  'power.budget-unknown':
    'The budget of the switch is not known: {watts} W are reckoned with (common practice, no source). It stands on its label.',
  'power.budget-class-table':
    'A port gives by class: 0 and 3 15.4 W, 1 4 W, 2 7 W, 4 30 W, 5 45 W, 6 60 W, 7 75 W, 8 90 W (IEEE 802.3 clauses 33 and 145, as restated in published overviews).',
  'power.night-unknown':
    'It is not known what infrared adds: 0 to 8 W for each camera are reckoned with (common practice, no source).',
  'power.ports-unknown':
    'It is not known what hangs on the ports: 0 to 720 W are reckoned with (common practice, no source).',
  'power.allocated': 'Counted by class, the cameras use {watts} W.',
  'power.drawn-by-day': 'By what they draw, they use {watts} W as read.',
  'power.drawn-at-night': 'By what they draw at night, infrared on, they use {watts} W.',
  'power.allocated-with-next': 'Counted by class, with the next camera: {watts} W.',
  'power.drawn-with-next': 'By what they draw at night, with the next camera: {watts} W.',
  'power.left': 'Of the budget {watts} W are left.',
  'power.short': 'The budget is short by {watts} W.',
  'power.maybe-short': 'At worst the budget is short by {watts} W.',
  'power.counts-class': 'This switch counts by class. What the cameras draw does not matter to it.',
  'power.counts-drawn': 'This switch counts what the cameras draw. Night is what counts.',
  'power.counts-unknown': 'It is not known how this switch counts. It must be enough both ways to be fine.',
  'power.next-comes-up': 'The next camera gets its power, and no other loses it.',
  'power.newest-stays-dark':
    'When the budget is used up, this switch gives the newest camera nothing: it stays dark.',
  'power.when-full-unknown':
    'It is not known what this switch does when its budget is used up. The newest camera stays dark, or ports are let go by priority.',
  'power.shed': 'By priority port {first} goes first. At worst these have to go, in this order: {ports}.',
  'power.shed-source':
    'Low goes before high, high before critical, and of those alike the highest port number first (manuals of managed switches; a switch may be set otherwise).',

  'power.estimate':
    'This is an estimate from what was said. It proves nothing. Volts measured at the camera under load do.',
  'power.decides-length': 'Find out this first: the length of the cable.',
  'power.decides-wire': 'Find out this first: how thick the wires are, as printed on the cable.',
  'power.decides-metal':
    'Find out this first: whether the wires are copper or clad aluminium. The print says Cu or CCA.',
  'power.decides-temperature': 'Find out this first: how warm the cable gets.',
  'power.decides-source-volts': 'Find out this first: the volts at the port.',
  'power.decides-camera-watts': 'Find out this first: the watts on the label of the camera.',
  'power.decides-port-watts': 'Find out this first: the watts the port can give.',
  'power.decides-least-volts': 'Find out this first: the fewest volts the camera works with, from its label.',
  'power.decides-source-kind':
    'Find out this first: whether the source is of the 802.3 kind or passive, from its label.',
  'power.decides-camera-class': 'Find out this first: the kind of power on the label of the camera.',
  'power.decides-supply-volts': 'Find out this first: the volts on the label of the supply.',
  'power.decides-rating': 'Find out this first: the amps or watts on the label of the supply.',
  'power.decides-draw': 'Find out this first: what the camera takes, infrared on, in watts.',
  'power.decides-others': 'Find out this first: how far away the other cameras are and what they take.',
  'power.decides-layout': 'Find out this first: whether each camera has its own cable.',
  'power.decides-budget': 'Find out this first: the power budget on the label of the switch.',
  'power.decides-counts': 'Find out this first: whether the switch counts by class or by what is drawn.',
  'power.decides-night-watts': 'Find out this first: the readings of the ports in the dark.',
  'power.decides-ports': 'Find out this first: class and watts of every port, from the page of the switch.',
  'power.decides-next': 'Find out this first: class and watts of the camera that is to come.',

  'power.caution-mains':
    'Mains: do not open a power supply, a plug or a fuse box. Fixed wiring is for a licensed electrician.',
  'power.caution-live': 'Change no wire while it has power. Switch off first and check that it is off.',
  'power.caution-ladder': 'Ladders: an installer only, never the caller, with both hands free.',
  'power.caution-outdoors':
    'Copper outdoors or between buildings can bring lightning indoors. Stay off it in a thunderstorm. Protectors and bonding are for licensed practice.',
  'power.caution-code': 'Local code and the labels of the makers come first.',
} as const;
