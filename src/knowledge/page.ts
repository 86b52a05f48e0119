/** A part of a line of text. `line` counts from 1. */
export type Inline =
  | { readonly kind: 'words' | 'code' | 'raw'; readonly text: string; readonly line: number }
  | { readonly kind: 'strong' | 'stressed'; readonly parts: Phrase; readonly line: number }
  | { readonly kind: 'link'; readonly to: string; readonly parts: Phrase; readonly line: number }
  | { readonly kind: 'picture'; readonly from: string; readonly shows: string; readonly line: number }
  | { readonly kind: 'break'; readonly line: number };

export type Phrase = readonly Inline[];

export interface Heading {
  readonly kind: 'heading';
  /** 1 is the title. */
  readonly level: number;
  readonly parts: Phrase;
  readonly line: number;
}

export interface List {
  readonly kind: 'list';
  /** The number of the first step; absent where the items have no numbers. */
  readonly first?: number;
  /** Whether the items stand without empty lines between them. */
  readonly tight: boolean;
  readonly items: readonly (readonly Block[])[];
  readonly line: number;
}

export interface Table {
  readonly kind: 'table';
  readonly head: readonly Phrase[];
  readonly rows: readonly (readonly Phrase[])[];
  readonly line: number;
}

/** What a page is made of. HTML that was written into the markdown is kept apart as `raw`: it is never shown. */
export type Block =
  | Heading
  | List
  | Table
  | { readonly kind: 'paragraph'; readonly parts: Phrase; readonly line: number }
  | { readonly kind: 'quote'; readonly blocks: readonly Block[]; readonly line: number }
  | { readonly kind: 'code' | 'raw'; readonly text: string; readonly line: number }
  | { readonly kind: 'rule'; readonly line: number };
