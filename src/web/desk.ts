import { advance, type Call, openCall } from '../call/call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT, type Role } from '../call/events.js';
import { pasteEvent } from '../call/from-paste.js';
import { answered, type Happening, outcomeOf, rawOf, type Said, stillDark } from '../call/outcome.js';
import { handedOver } from '../call/record/handed-over.js';
import { recordTextOf } from '../call/record/read-record.js';
import { recordName } from '../call/record/record-name.js';
import { ticketOf } from '../call/ticket-of.js';
import { VERSION } from '../call/version.js';
import { printable } from '../messages/printable.js';
import { inWords, say } from '../messages/say.js';
import { type Arrived, arrivedFrom } from './arrived.js';
import type { Device } from './device.js';
import type { Keeper } from './keep.js';
import { bytesOfLink, fragmentOf, LONGEST_LINK } from './link.js';
import type { PackedRules } from './packed.js';
import { pastingAfter, pastingOf } from './pasting.js';
import { FRESH, type Mode, type Store, type View } from './state.js';

/** What can be done on the page; every change of it comes from here. */
export interface Desk {
  readonly begin: (role: Role) => Promise<void>;
  /** Goes on with a record; `name` is what it is called where something is wrong with it. */
  readonly open: (bytes: Uint8Array, name: string) => Promise<void>;
  readonly openKept: (id: string) => Promise<void>;
  /** Reads the record in a link, wherever in a text it stands, and asks before it is opened. */
  readonly openLink: (text: string) => Promise<void>;
  /** Opens what has arrived, or leaves it and goes back. */
  readonly decide: (isWanted: boolean) => void;
  readonly reply: (said: Said) => Promise<void>;
  readonly happen: (happening: Happening) => Promise<void>;
  readonly takeText: (text: string) => void;
  readonly turnTo: (mode: Mode) => void;
  readonly forget: (id: string) => void;
  readonly leave: () => void;
  readonly copyTicket: (unmasked: boolean) => Promise<void>;
  readonly saveTicket: (unmasked: boolean) => void;
  readonly saveRecord: () => void;
  /** Makes the link to hand the call over by. */
  readonly makeLink: (unmasked: boolean) => Promise<void>;
  readonly copyLink: () => Promise<void>;
}

const STEP: Mode = { kind: 'step' };

/** The desk of a page. */
export function deskOf({ rules, digest }: PackedRules, store: Store, keeper: Keeper, device: Device): Desk {
  const show = (call: Call, record: string, notice: string): void => {
    const { id } = call.state.header;
    const isKept = call.state.closed !== undefined || keeper.write(id, record);
    if (call.state.closed !== undefined) keeper.forget(id);
    store.set({
      place: 'call',
      call,
      record,
      mode: STEP,
      view: call.state.closed === undefined ? 'step' : 'ticket',
      reading: [],
      arrived: undefined,
      handing: false,
      link: undefined,
      busy: false,
      notice: isKept ? notice : say('page.not-kept'),
    });
  };

  const begin = async (role: Role): Promise<void> => {
    const header: CallHeader = {
      record: RECORD_FORMAT,
      id: device.newId(),
      opened: device.now(),
      whydark: VERSION,
      rules: { version: rules.manifest.version, digest },
      role,
    };
    show(await openCall(rules, digest, header), recordTextOf(header, []), '');
  };

  const open = async (bytes: Uint8Array, name: string, from: Arrived['from'] = 'file'): Promise<void> => {
    const read = await arrivedFrom({ rules, digest }, bytes, printable(name, 60));
    if (!read.ok) return store.set({ notice: read.says });
    const { call, record } = read.value;
    const kept = keeper.read(call.state.header.id);
    const replaces = kept !== undefined && !record.startsWith(kept);
    const arrived: Arrived = { ...read.value, from, replaces };
    // A link may have come from anybody, and nobody should lose a call by opening another.
    if (from === 'link' || (from === 'file' && replaces))
      store.set({ place: 'arrived', arrived, notice: '' });
    else takeArrived(arrived);
  };

  const takeArrived = ({ call, record }: Arrived): void =>
    show(call, record, say('page.opened', { events: call.state.events.length }));

  const openLink = async (text: string): Promise<void> => {
    const found = await bytesOfLink(text);
    if (found.ok) return open(found.bytes, say('page.link-name'), 'link');
    store.set({ notice: say(`page.link-${found.why}`) });
  };

  const happen = async (happening: Happening): Promise<void> => {
    const { call, record, busy } = store.get();
    // A key pressed before the next step shows would answer what nobody has read.
    if (!call || busy) return;
    store.set({ busy: true });
    const event: CallEvent = { at: device.now(), ...happening };
    const next = await advance(call, event);
    if (!next.ok) return store.set({ busy: false, notice: inWords(next.problem) });
    show(next.value, `${record}${JSON.stringify(event)}\n`, '');
  };

  const takeText = (text: string): void => {
    const { call } = store.get();
    const isWanted = call !== undefined && call.state.closed === undefined && text.trim() !== '';
    if (!isWanted) store.set({ notice: say('paste.nothing-came') });
    else store.set({ mode: { kind: 'paste', pasting: pastingOf(call, text) }, view: 'step', notice: '' });
  };

  const reply = async (said: Said): Promise<void> => {
    const { call, mode } = store.get();
    if (!call) return;
    const id = said.kind === 'one' ? said.id : '';
    switch (mode.kind) {
      case 'step': {
        const outcome = outcomeOf(call, said);
        return outcome.kind === 'event'
          ? happen(outcome.event)
          : store.set({ mode: outcome, view: viewOf(outcome, call) });
      }
      case 'pick':
      case 'told':
        return store.set({ mode: { kind: 'change', question: id } });
      case 'change':
        return happen(answered(mode.question, rawOf(said)));
      case 'check':
        return happen(stillDark(mode.remedy, id));
      case 'note': {
        const text = said.kind === 'text' ? said.text : '';
        return text.trim() === '' ? store.set({ mode: STEP }) : happen({ type: 'noted', text });
      }
      case 'paste': {
        const { pasting } = mode;
        if (pasting.stage === 'filled' && id === 'yes')
          return happen(pasteEvent(call.state, pasting.paste, pasting.answers, pasting.about));
        const after = pastingAfter(call, pasting, id);
        return store.set({ mode: after ? { kind: 'paste', pasting: after } : STEP });
      }
      case 'stop':
        if (id === 'ticket') return happen({ type: 'closed', how: 'stopped' });
        return id === 'later' ? leave() : store.set({ mode: STEP });
      case 'forget':
        return id === 'yes' ? forget(call.state.header.id) : store.set({ mode: STEP });
    }
  };

  const leave = (): void => store.set({ ...FRESH, letters: store.get().letters });

  const forget = (id: string): void => {
    keeper.forget(id);
    leave();
    store.set({ notice: say('page.forgotten') });
  };

  return {
    begin,
    open,
    openKept: async (id) => open(new TextEncoder().encode(keeper.read(id) ?? ''), id, 'kept'),
    openLink,
    decide: (isWanted) => {
      const { arrived, call } = store.get();
      if (arrived && isWanted) takeArrived(arrived);
      else store.set({ place: call ? 'call' : 'start', arrived: undefined });
    },
    reply,
    happen,
    takeText,
    turnTo: (mode) => store.set({ mode, handing: false, notice: '', view: viewOf(mode, store.get().call) }),
    forget,
    leave,
    copyTicket: async (unmasked) => {
      const { call } = store.get();
      if (!call) return;
      const done = await device.copy(ticketOf(call, { unmasked }));
      store.set({ notice: say(done ? 'page.copied' : 'page.not-copied') });
    },
    saveTicket: (unmasked) => {
      const { call } = store.get();
      if (call)
        device.save(fileName(call).replace('.jsonl', '.md'), ticketOf(call, { unmasked }), 'text/markdown');
    },
    saveRecord: () => {
      const { call, record } = store.get();
      if (call) device.save(fileName(call), record, 'application/jsonl');
    },
    makeLink: async (unmasked) => {
      const { call } = store.get();
      if (!call) return;
      const fragment = await fragmentOf(handedOver(call, { unmasked }).text);
      const address = device.address() + (fragment ?? '');
      const isTooLong = address.length > LONGEST_LINK;
      if (fragment === undefined || isTooLong)
        store.set({ link: undefined, notice: say(isTooLong ? 'page.link-too-long' : 'page.link-none') });
      else store.set({ link: { address, fragment }, notice: '' });
    },
    copyLink: async () => {
      const { link } = store.get();
      if (!link) return;
      const done = await device.copy(link.address);
      store.set({ notice: say(done ? 'page.link-copied' : 'page.not-copied') });
    },
  };
}

/** An answer is changed where it stands, in the list; what has no answer yet is asked where the step stands. */
function viewOf(mode: Mode, call: Call | undefined): View {
  const isInList =
    mode.kind === 'pick' || (mode.kind === 'change' && call?.state.answers.has(mode.question) === true);
  return isInList ? 'answers' : 'step';
}

/** A record from outside may have an id that is no part of a file name. */
function fileName({ state: { header } }: Call): string {
  const id = header.id.replace(/^[^A-Za-z0-9]+|[^A-Za-z0-9-]/g, '').slice(0, 64);
  return recordName({ ...header, id: id === '' ? 'call' : id });
}
