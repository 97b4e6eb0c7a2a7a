import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";

/** The way back to the first page of an archive. */
export function StartPlace({ from }: { readonly from: string }): JSX.Element {
  return <a href={relative(from, PAGES.start)}>Start here</a>;
}
