/** How a later text differs from an earlier one, in the form that people who compare texts know (unified). */
import { createTwoFilesPatch, FILE_HEADERS_ONLY } from "diff";

export function difference(of: { readonly name: string; readonly text: string }, to: typeof of): string {
  return createTwoFilesPatch(of.name, to.name, of.text, to.text, undefined, undefined, {
    context: 1,
    headerOptions: FILE_HEADERS_ONLY,
  }).trimEnd();
}
