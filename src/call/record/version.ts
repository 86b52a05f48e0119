const SEMVER =
  /^(0|[1-9]\d{0,8})\.(0|[1-9]\d{0,8})\.(0|[1-9]\d{0,8})(?:-[0-9A-Za-z.-]+)?(?:\+[0-9A-Za-z.-]+)?$/;

/** Is this a version as in Semantic Versioning 2.0.0? */
export function isVersion(value: unknown): value is string {
  return typeof value === 'string' && SEMVER.test(value);
}

/**
 * Is `version` newer than `than`? Major, minor and patch decide (Semantic Versioning 2.0.0, 11.2);
 * pre-releases of one version count as equal. False where either is no version.
 */
export function isNewer(version: string, than: string): boolean {
  const left = SEMVER.exec(version);
  const right = SEMVER.exec(than);
  if (left === null || right === null) return false;
  for (const part of [1, 2, 3]) {
    const difference = Number(left[part]) - Number(right[part]);
    if (difference !== 0) return difference > 0;
  }
  return false;
}
