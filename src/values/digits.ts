const THOUSANDS_IN_GROUPS = /^\d{1,3}(?:([., ])\d{3})(?:\1\d{3})+$/;
const POINT_AFTER_GROUPS = /^\d{1,3}(?:([, ])\d{3})(?:\1\d{3})*\.\d+$/;
const COMMA_AFTER_GROUPS = /^\d{1,3}(?:([. ])\d{3})(?:\1\d{3})*,\d+$/;
const ONE_GROUP_BY_SPACE = /^\d{1,3} \d{3}$/;
const EITHER = /^([1-9]\d{0,2})[.,](\d{3})$/;
const PLAIN = /^\d*(?:[.,]\d+)?$/;

/**
 * Every number that digits with points, commas and spaces may mean: none, one, or two where a comma or
 * point before three digits may be a decimal sign or part a thousand (`1,250`). The decimal reading is first.
 */
export function readings(digits: string): readonly number[] {
  const either = EITHER.exec(digits);
  if (either !== null) return [Number(`${either[1]}.${either[2]}`), Number(`${either[1]}${either[2]}`)];
  if (THOUSANDS_IN_GROUPS.test(digits) || ONE_GROUP_BY_SPACE.test(digits)) {
    return [Number(digits.replace(/[., ]/g, ''))];
  }
  if (POINT_AFTER_GROUPS.test(digits)) return [Number(digits.replace(/[, ]/g, ''))];
  if (COMMA_AFTER_GROUPS.test(digits)) return [Number(digits.replace(/[. ]/g, '').replace(',', '.'))];
  return PLAIN.test(digits) && digits !== '' ? [Number(digits.replace(',', '.'))] : [];
}
