import { SVG, XLINK } from "./allowed.ts";
import type { DrawnElement } from "./tree.ts";

const ENTITIES: { readonly [sign: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "\t": "&#9;",
  "\n": "&#10;",
  "\r": "&#13;",
};

/** The drawing as XML. Every sign that could be markup is escaped here, whatever it was in the file. */
export function written(root: DrawnElement): string {
  return element(root, ` xmlns="${SVG}"${usesXlink(root) ? ` xmlns:xlink="${XLINK}"` : ""}`);
}

function element({ name, attributes, children }: DrawnElement, namespaces = ""): string {
  const own = [...attributes].map(([attribute, value]) => ` ${attribute}="${quoted(value)}"`).join("");
  const within = children.map((child) => (typeof child === "string" ? plain(child) : element(child))).join("");
  return within === "" ? `<${name}${namespaces}${own}/>` : `<${name}${namespaces}${own}>${within}</${name}>`;
}

function usesXlink({ attributes, children }: DrawnElement): boolean {
  return attributes.has("xlink:href") || children.some((child) => typeof child !== "string" && usesXlink(child));
}

function plain(text: string): string {
  return text.replace(/[&<>\r]/g, (sign) => ENTITIES[sign] ?? "");
}

function quoted(text: string): string {
  return text.replace(/[&<>"\t\n\r]/g, (sign) => ENTITIES[sign] ?? "");
}
