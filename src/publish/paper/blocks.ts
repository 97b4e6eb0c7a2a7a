/** What a paper is made of: data alone, which the template sets. No text of it is ever read as markup. */

export type Inline =
  | string
  | { readonly i: "strong" | "emph" | "code" | "was" | "is" | "quiet"; readonly c: readonly Inline[] }
  /** Never broken over lines. */
  | { readonly i: "id"; readonly t: string }
  /** A link to a thing that stands in the same paper. */
  | { readonly i: "to"; readonly to: string; readonly c: readonly Inline[] }
  | { readonly i: "mark"; readonly shape: string; readonly word: string; readonly grave: boolean }
  | { readonly i: "break" };

interface Column {
  /** Share of what the narrow columns leave; 0 for one that is as wide as its words. */
  readonly share: number;
  readonly right: boolean;
}

interface Row {
  readonly ids: readonly string[];
  readonly cells: readonly (readonly Block[])[];
  /** So long that it may go on overleaf. */
  readonly long: boolean;
}

interface PlateMark {
  /** In percent of the drawing. */
  readonly left: number;
  readonly top: number;
  readonly of?: readonly [left: number, top: number];
  readonly shape: string;
  readonly word: string;
  readonly grave: boolean;
}

export type Block =
  | {
      readonly b: "heading";
      readonly level: number;
      /** Whether the contents name it. */
      readonly told: boolean;
      readonly ids: readonly string[];
      readonly c: readonly Inline[];
    }
  | {
      readonly b: "text";
      readonly look: "plain" | "small" | "quiet" | "label" | "opens" | "lead";
      readonly c: readonly Inline[];
    }
  | {
      readonly b: "list";
      readonly sign: "none" | "point" | "box";
      /** Its items are short, and stand side by side. */
      readonly short: boolean;
      readonly items: readonly (readonly Block[])[];
    }
  | { readonly b: "facts"; readonly rows: readonly (readonly [readonly Inline[], readonly Inline[]])[] }
  | {
      readonly b: "table";
      readonly caption: readonly Inline[];
      /** What every row has in common, said once above them: the words of a column and what stands in each of its cells. */
      readonly alike: readonly (readonly [readonly Inline[], readonly Inline[]])[];
      readonly columns: readonly Column[];
      readonly head: readonly (readonly Inline[])[];
      readonly rows: readonly Row[];
    }
  | { readonly b: "drawn"; readonly file: string; readonly alt: string; readonly wide: boolean }
  /** Drawings side by side. */
  | { readonly b: "drawings"; readonly items: readonly Block[] }
  | { readonly b: "picture"; readonly file: string; readonly alt: string; readonly caption: readonly Inline[] }
  | { readonly b: "pictures"; readonly items: readonly Block[] }
  | { readonly b: "plate"; readonly file: string; readonly alt: string; readonly marks: readonly PlateMark[] }
  /** Not broken over pages if a page can hold it. */
  | { readonly b: "whole"; readonly framed: boolean; readonly c: readonly Block[] }
  | { readonly b: "anchors"; readonly ids: readonly string[] }
  | { readonly b: "signoff"; readonly words: readonly string[] }
  | { readonly b: "index"; readonly rows: readonly { readonly id: string; readonly to: string }[] }
  | { readonly b: "contents" };

/** One paper, whole: what the template is given. */
export interface Paper {
  readonly title: string;
  /** Words of the running heads. */
  readonly record: string;
  readonly edition: string;
  readonly day: string;
  readonly seal: string;
  /** Of the record, for the file's own facts: year, month, day. */
  readonly date: readonly [year: number, month: number, day: number];
  readonly language: string;
  readonly front: readonly Block[];
  readonly body: readonly Block[];
}

/** A paper as Typst reads it: so it goes to the process that sets it. */
export interface PaperData {
  readonly json: string;
  readonly date: Paper["date"];
}

export const dataOf = (paper: Paper): PaperData => ({ json: JSON.stringify(paper), date: paper.date });
