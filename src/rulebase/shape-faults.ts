import { nearest } from './did-you-mean.js';
import { error, type RuleFault } from './fault.js';
import { pointer } from './pointer.js';
import { fieldsOf, type ShapeError, shapeSentence, unknownField } from './shape-sentence.js';

/** Wrappers that only repeat what an inner error says better. */
const NOISE: ReadonlySet<string> = new Set(['if', 'anyOf', 'allOf', 'oneOf', 'propertyNames']);

const GROUPS: readonly string[] = ['all', 'any', 'not'];
const PARTS_OF_TEST = 3;

/** What went wrong in one object: fields that are missing, and fields its mistyped ones were meant to be. */
interface Gaps {
  readonly missing: Set<string>;
  readonly meant: Set<string>;
}

/** Faults from the schema checker's errors: one for each thing to put right. */
export function shapeFaults(
  file: string,
  schema: string,
  errors: readonly ShapeError[],
): readonly RuleFault[] {
  const real = errors.filter((one) => !NOISE.has(one.keyword));
  const gaps = gapsOf(real);
  const faults = real.flatMap((one) => faultOf(file, schema, one, gaps.get(one.instancePath)));
  return [...new Map(faults.map((fault) => [JSON.stringify(fault), fault])).values()];
}

function gapsOf(errors: readonly ShapeError[]): ReadonlyMap<string, Gaps> {
  const all = new Map<string, Gaps>();
  for (const one of errors) {
    const gaps = all.get(one.instancePath) ?? { missing: new Set(), meant: new Set() };
    all.set(one.instancePath, gaps);
    if (one.keyword === 'required') gaps.missing.add(String(one.params.missingProperty));
    if (one.keyword !== 'additionalProperties') continue;
    const near = nearest(String(one.params.additionalProperty), fieldsOf(one));
    if (near !== undefined) gaps.meant.add(near);
  }
  return all;
}

function faultOf(
  file: string,
  schema: string,
  one: ShapeError,
  gaps: Gaps | undefined,
): readonly RuleFault[] {
  const at = one.instancePath;
  switch (one.keyword) {
    case 'additionalProperties': {
      const field = String(one.params.additionalProperty);
      return [error(file, at + pointer(field), unknownField(field, fieldsOf(one)))];
    }
    case 'required':
      return missingField(file, one, gaps);
    case 'false schema':
      return at.endsWith('/fact')
        ? [error(file, at.slice(0, at.lastIndexOf('/')), { id: 'rules.bare-test' })]
        : [error(file, at, { id: 'rules.not-here' })];
    case 'uniqueItems':
      return [error(file, at + pointer(Number(one.params.i)), { id: 'rules.twice-in-list' })];
    default:
      return [
        error(
          file,
          one.propertyName === undefined ? at : at + pointer(one.propertyName),
          shapeSentence(one, schema),
        ),
      ];
  }
}

/** Silent where a mistyped field beside it is the one that is missing. */
function missingField(file: string, one: ShapeError, gaps: Gaps | undefined): readonly RuleFault[] {
  const field = String(one.params.missingProperty);
  if (gaps?.meant.has(field)) return [];
  if (one.schemaPath.endsWith('/else/required')) {
    // Only conditions ask for fields in an else: those of a test, where no group stands.
    if (GROUPS.some((group) => gaps?.meant.has(group))) return [];
    if (gaps?.missing.size === PARTS_OF_TEST)
      return [error(file, one.instancePath, { id: 'rules.not-a-condition' })];
  }
  return [error(file, one.instancePath, { id: 'rules.missing-field', with: { field } })];
}
