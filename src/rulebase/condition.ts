import type { FactId } from './records.js';

/** json-rules-engine's own condition format, without `path`, `params` and named conditions. */
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  | Test;

/** One comparison: the fact is a question id, a fact id or a finding id. */
export interface Test {
  readonly fact: FactId;
  readonly operator: Operator;
  readonly value: Scalar | readonly Scalar[];
}

export const OPERATORS = [
  'equal',
  'notEqual',
  'lessThan',
  'lessThanInclusive',
  'greaterThan',
  'greaterThanInclusive',
  'in',
  'notIn',
  'contains',
  'doesNotContain',
] as const;
export type Operator = (typeof OPERATORS)[number];
export type Scalar = string | number | boolean;
