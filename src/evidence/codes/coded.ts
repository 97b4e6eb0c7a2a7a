/** One code of a table of codes, with the values that belong to it. */
export type Coded<Table, C extends keyof Table = keyof Table> = {
  readonly [K in C]: { readonly code: K; readonly values: Table[K] };
}[C];
