import type { Sentence } from '../messages/say.js';
import { nearest } from './did-you-mean.js';
import { shown } from './shown.js';

/** What the schema checker reports, as far as it is read here. */
export interface ShapeError {
  readonly keyword: string;
  readonly instancePath: string;
  readonly schemaPath: string;
  readonly params: Readonly<Record<string, unknown>>;
  readonly data?: unknown;
  readonly propertyName?: string | undefined;
  /** The part of the schema that was not met. Its description says what may stand there. */
  readonly parentSchema?: object | undefined;
}

/** The fields that may stand in the object an error is about. */
export function fieldsOf({ parentSchema }: ShapeError): readonly string[] {
  return parentSchema && 'properties' in parentSchema ? Object.keys(parentSchema.properties ?? {}) : [];
}

export function unknownField(field: string, known: readonly string[]): Sentence {
  if (field === 'path' && known.includes('operator')) return { id: 'rules.path-forbidden' };
  const near = nearest(field, known);
  return near === undefined
    ? { id: 'rules.unknown-field', with: { field: shown(field), known: known.join(', ') } }
    : { id: 'rules.unknown-field-near', with: { field: shown(field), near } };
}

/** What to write instead of a value that does not meet its schema. Throws for a keyword our schemas do not use. */
export function shapeSentence(one: ShapeError, schema: string): Sentence {
  const found = shown(one.propertyName ?? one.data);
  const limit = Number(one.params.limit);
  switch (one.keyword) {
    case 'enum':
      return notOneOf(one, found);
    case 'pattern':
      return one.instancePath === '/$schema'
        ? { id: 'rules.wrong-schema', with: { found, schema } }
        : { id: 'rules.wrong-form', with: { found, form: described(one) } };
    case 'type':
      return { id: 'rules.wrong-type', with: { found, wanted: [one.params.type].flat().join(', ') } };
    case 'minItems':
    case 'minProperties':
      return { id: 'rules.too-few', with: { least: limit } };
    case 'maxProperties':
      return { id: 'rules.mixed-condition' };
    case 'minimum':
      return { id: 'rules.too-small', with: { found, least: limit } };
    case 'exclusiveMinimum':
      return { id: 'rules.not-above', with: { found, floor: limit } };
    case 'maximum':
      return { id: 'rules.too-large', with: { found, most: limit } };
    default:
      throw new Error(`no sentence for the schema keyword ${one.keyword}`);
  }
}

function described({ parentSchema, params }: ShapeError): string {
  const form = parentSchema && 'description' in parentSchema ? parentSchema.description : params.pattern;
  return String(form);
}

function notOneOf(one: ShapeError, found: string): Sentence {
  const allowed = [one.params.allowedValues].flat().map(String);
  const near = typeof one.data === 'string' ? nearest(one.data, allowed) : undefined;
  const known = allowed.map((word) => `"${word}"`).join(', ');
  return near === undefined
    ? { id: 'rules.not-one-of', with: { found, known } }
    : { id: 'rules.not-one-of-near', with: { found, known, near } };
}
