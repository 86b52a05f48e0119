import type { AdapterDraft } from './adapter-draft.js';

const BASE = /\b(\d{1,5}(?:\.\d)?)(G?)base/i;

/** What the `media:` line of a BSD says: `autoselect (1000baseT <full-duplex>)`, `IEEE 802.11 Wireless Ethernet`. */
export function readMedia(adapter: AdapterDraft, text: string, line: number): void {
  const [, digits, giga] = BASE.exec(text) ?? [];
  const isRadio = /802\.11/.test(text);
  if (digits !== undefined && !isRadio) {
    adapter.speed = { value: Number(digits) * (giga === '' ? 1 : 1000), line };
  }
  const duplex = /\b(full|half)-duplex\b/.exec(text)?.[1];
  if (duplex === 'full' || duplex === 'half') adapter.duplex = { value: duplex, line };
  if (adapter.kind !== 'unknown') return;
  if (isRadio) adapter.kind = 'wifi';
  else if (digits !== undefined || /^\s{0,20}media: Ethernet/.test(text)) adapter.kind = 'lead';
}
