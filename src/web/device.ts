/** What the page needs of the computer and the browser it runs in. */
export interface Device {
  /** ISO 8601 in UTC. */
  readonly now: () => string;
  /** Eight random hexadecimal digits. */
  readonly newId: () => string;
  /** Gives false where the browser does not let a page copy. */
  readonly copy: (text: string) => Promise<boolean>;
  readonly clipboard: () => Promise<string | undefined>;
  readonly save: (name: string, text: string, type: string) => void;
  readonly print: () => void;
  /** Where this page stands, without a fragment. */
  readonly address: () => string;
}

export const DEVICE: Device = {
  now: () => new Date().toISOString(),
  newId: () =>
    [...crypto.getRandomValues(new Uint8Array(4))].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
  copy,
  clipboard: async () => {
    try {
      return await navigator.clipboard.readText();
    } catch {
      return undefined;
    }
  },
  save: (name, text, type) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  },
  print: () => window.print(),
  address: () => location.href.split('#')[0] ?? '',
};

async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copySelected(text);
  }
}

/** The old way, for browsers that keep the clipboard from a page opened from disk. */
function copySelected(text: string): boolean {
  const area = document.createElement('textarea');
  area.value = text;
  area.className = 'heard';
  document.body.append(area);
  const before = document.activeElement;
  area.select();
  const done = document.execCommand('copy');
  area.remove();
  if (before instanceof HTMLElement) before.focus();
  return done;
}
