const UNKNOWN =
  /^(?:\?+|(?:i |we )?(?:do ?n'?t|do not|can'?t|cannot|can not)[ -](?:know|tell|say)|dunno|unknown|unsure|not sure|not known|no idea)[.?]?$/;

/** Whether tidied text says that nobody knows: `?`, `don't know`, `can't tell`, `not sure`. */
export function saysUnknown(text: string): boolean {
  return UNKNOWN.test(text.replace(/[’‘`´]/g, "'").toLowerCase());
}
