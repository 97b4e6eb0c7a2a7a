/** Of a code that says all by itself. */
export type NoValues = { readonly [none in never]: never };
