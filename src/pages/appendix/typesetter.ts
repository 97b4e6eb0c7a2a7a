/** The package that sets PDFs, and the version that they were tried with. */
export const TYPESETTER = ["@myriaddreamin/typst-ts-node-compiler", "0.7.0"] as const;
