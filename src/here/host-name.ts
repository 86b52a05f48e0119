const LABEL = /^[a-z0-9_](?:[a-z0-9_-]{0,61}[a-z0-9_])?$/i;
const LONGEST = 253;
/** Resolvers read such an end as an address in one of its old forms (inet_aton of POSIX.1-2017). */
const NUMBER = /^(?:[0-9]+|0x[0-9a-f]*)$/i;

/** Whether a text is a host name: labels with dots between, the last no number (RFC 1123, section 2.1). */
export function isHostName(text: string): boolean {
  if (text.length === 0 || text.length > LONGEST) return false;
  const labels = text.replace(/\.$/, '').split('.');
  return labels.every((label) => LABEL.test(label)) && !NUMBER.test(labels.at(-1) ?? '');
}
