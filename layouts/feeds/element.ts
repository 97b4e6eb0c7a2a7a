/** Elements of XML, escaped as those of pages are. */
import { h, type ComponentChild, type JSX } from "preact";

export const element = (
  name: string,
  attributes: { readonly [name: string]: string },
  ...children: readonly ComponentChild[]
): JSX.Element => h(name, attributes, ...children);
