export interface Generator {
  readonly name: string;
  /** What its size counts. */
  readonly unit: string;
  readonly most: number;
  readonly isBound: boolean;
  readonly file: (size: number) => { readonly path: string; readonly text: string };
}

export const GENERATORS: readonly Generator[];
export const DRAWINGS: readonly Generator[];
