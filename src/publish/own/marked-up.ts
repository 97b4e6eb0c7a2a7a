/** What own pages came to, looked at by the parser that Eleventy writes them with. */
import type { HtmlNode, HtmlTree } from "@11ty/eleventy";
import { DomUtils, parseDocument } from "htmlparser2";
import type { OwnFault } from "./task.ts";

/** What no page of a site may have, or what the program puts around the page itself. */
const REFUSED = new Set(
  "script style base form iframe frame frameset object embed applet portal link meta html head body title".split(" "),
);
const REFUSED_ATTRIBUTE = /^(?:style|on.+|srcdoc|ping|formaction|http-equiv|background)$/i;
/** Data of a chart: it runs nothing. */
const DATA = "application/json";

export function elementFaults(tree: HtmlTree, file: string): OwnFault[] {
  const faults: OwnFault[] = [];
  tree.walk((node) => {
    if (typeof node === "object" && typeof node.tag === "string") faults.push(...faultsOf(node, node.tag, file));
    return node;
  });
  return faults;
}

function faultsOf({ attrs = {} }: HtmlNode, tag: string, file: string): OwnFault[] {
  const name = tag.toLowerCase();
  const isRefused = REFUSED.has(name) && !(name === "script" && attrs["type"] === DATA);
  const elements: OwnFault[] = isRefused ? [{ kind: "element", file, name, typed: `<${tag}` }] : [];
  const attributes = Object.keys(attrs).filter((key) => REFUSED_ATTRIBUTE.test(key));
  return [...elements, ...attributes.map((key): OwnFault => ({ kind: "attribute", file, name: key, typed: key }))];
}

/**
 * A link as it leads from a page to another of the site, whether it began at the site's root or not. `elsewhere`: what a page may not ask
 * for; `beside`: nothing of the site.
 * @param from URL of the page, from the site's root
 * @param isFollowed whether a reader goes there, and nothing is asked for before
 */
export function linkOf(
  typed: string,
  from: string,
  isFollowed: boolean,
): "elsewhere" | "beside" | { readonly path: string; readonly href: string } {
  const scheme = /^([a-z][a-z\d+.-]*):|^[\\/]{2}/i.exec(typed.trim());
  if (scheme !== null)
    return isFollowed && /^(?:https?|mailto|tel)$/i.test(scheme[1] ?? "https") ? "beside" : "elsewhere";
  if (typed.startsWith("#") || typed === "") return "beside";
  const { pathname, search, hash } = new URL(typed, `http://site${encodeURI(from)}`);
  const whole = decoded(pathname).replace(/^\/+/, "");
  const path = whole === "" || whole.endsWith("/") ? `${whole}index.html` : whole;
  const up = "../".repeat(from.split("/").length - 2);
  return { path, href: up + encodeURI(path) + search + hash };
}

/** What an attribute holds, as it stands between its quotes: `a&amp;b` is `a&b`. */
export function attributeValue(written: string): string {
  const { children } = parseDocument(`<a href="${written.replaceAll('"', "&quot;")}">`);
  const [link] = DomUtils.getElementsByTagName("a", children);
  return link?.attribs.href ?? written;
}

/** The same, to be written between double quotes. */
export const writtenOf = (value: string): string => value.replaceAll("&", "&amp;").replaceAll('"', "&quot;");

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
