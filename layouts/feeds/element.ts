/** Elements of XML 1.0. */
import { h, type JSX } from "preact";

interface Attributes {
  readonly [name: string]: string;
}

/** What a document may not hold even escaped (XML 1.0, 5th edition, production 2: from memory). */
const NO_CHARACTER = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const allowed = (text: string): string => text.replace(NO_CHARACTER, "\uFFFD");

/** `]]>` may stand in no text, so `>` is escaped too, which it need not be in a page. */
const escaped = (text: string): string =>
  allowed(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** One that holds text. */
export const words = (name: string, text: string): JSX.Element =>
  h(name, { dangerouslySetInnerHTML: { __html: escaped(text) } });

/** One that holds others, or nothing. */
export const element = (name: string, attributes: Attributes, ...children: readonly JSX.Element[]): JSX.Element =>
  h(name, Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, allowed(value)])), ...children);
