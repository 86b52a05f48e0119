import { Ajv2020 } from 'ajv/dist/2020.js';
import { error, type RuleFault } from './fault.js';
import { filePlace, MANIFEST, SCHEMA_OF } from './layout.js';
import { shapeFaults } from './shape-faults.js';

/** One file of `rules/`: its path inside the folder, and what it holds. */
export interface RuleFile {
  readonly file: string;
  readonly json: unknown;
}

/** The schemas of `rules/schema/`, by file name. */
export type Schemas = Readonly<Record<string, object>>;

/** Compiling takes far longer than checking, and the same schemas give the same checks. */
const compiled = new WeakMap<Schemas, Ajv2020>();

function compile(schemas: Schemas): Ajv2020 {
  const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true, verbose: true });
  for (const [name, schema] of Object.entries(schemas)) ajv.addSchema(schema, name);
  return ajv;
}

/**
 * Holds every file against the schema of its kind (JSON Schema 2020-12) and gives every fault at once.
 * Throws when a schema itself is broken or missing: that is a fault of the program, not of the rules.
 */
export function checkShape(files: readonly RuleFile[], schemas: Schemas): readonly RuleFault[] {
  const ajv = compiled.get(schemas) ?? compile(schemas);
  compiled.set(schemas, ajv);
  return files.flatMap(({ file, json }) => {
    const kind = file === MANIFEST ? 'manifest' : filePlace(file)?.kind;
    if (kind === undefined) return [error(file, '', { id: 'rules.misplaced-file' })];
    const name = SCHEMA_OF[kind];
    const validate = ajv.getSchema(name);
    if (validate === undefined) throw new Error(`the schema ${name} is missing`);
    return validate(json) ? [] : shapeFaults(file, name, validate.errors ?? []);
  });
}
