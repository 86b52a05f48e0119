const FIELD =
  /^ {0,12}([A-Z][A-Za-z0-9]{1,40}(?:\.[A-Za-z0-9]{1,40})?(?: \([A-Za-z]{1,20}\))?) {0,30}: ?(.{0,400})$/;
const FURTHER = /^\s{2,60}(\S.{0,400})$/;

/** A property of an object as PowerShell lists it: `NetProfile.Name      : Network`. */
export interface ListField {
  readonly label: string;
  readonly value: string;
}

/** The property on a line. PowerShell translates no names of properties. */
export function listField(text: string): ListField | undefined {
  const [, label, value] = FIELD.exec(text) ?? [];
  return label === undefined || value === undefined ? undefined : { label, value: value.trim() };
}

/** What stands on an indented line below a property: a further value, or the rest of a long one. */
export function furtherValue(text: string): string | undefined {
  return FURTHER.exec(text)?.[1]?.trim();
}

/** The words of a value, also where they are listed in braces. */
export function valuesOf(value: string): readonly string[] {
  return value.split(/[\s,{}]+/).filter((word) => word !== '');
}
