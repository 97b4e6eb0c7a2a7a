import type { SaxesAttributeNS, SaxesTagNS } from "saxes";
import { ALIVE, ATTRIBUTES, type AttributeKind, IDLE_ATTRIBUTES, REFERRING, XLINK, XML, XMLNS } from "./allowed.ts";
import { told, type Told } from "./objection.ts";
import { declarationsOf, type Styled, presentedOf } from "./styles.ts";

interface Kept {
  readonly attributes: ReadonlyMap<string, string>;
  readonly objections: readonly Told[];
}

type Judged = { readonly name: string; readonly value: string } | { readonly objections: readonly Told[] } | undefined;

const MEASURE = /^[\w\s.,+%-]*$/;
const PATH = /^[\sMmZzLlHhVvCcSsQqTtAaEe\d.,+-]*$/;
/** Blanks are taken in one place alone, so that a row of them is not parted in every way there is. */
const TRANSFORM = /^\s*(?:(?:matrix|translate|rotate|scale|skewX|skewY)\s*\([\s\d.,eE+-]*\)\s*(?:,\s*(?=[a-z]))?)*$/;
const LOCAL = /^#[^\s#]+$/;

/**
 * What a `style` element may say of itself and still be a sheet that holds for every screen; it is then not said again.
 */
const SHEET_FOR_ALL: { readonly [attribute: string]: readonly string[] | undefined } = {
  type: ["", "text/css"],
  media: ["", "all", "screen"],
};

const FROM_OUTSIDE = "it runs code or fetches something from outside itself";
const SAVE_PLAIN = "save it as plain SVG with its pictures, links and scripts taken out, or as PNG and name that file";

/** Attributes of an element that may be written, and all that is against the others. What draws nothing is left out. */
export function attributesOf({ local, attributes }: SaxesTagNS): Kept {
  const kept = new Map<string, string>();
  const objections: Told[] = [];
  for (const attribute of Object.values(attributes)) {
    const judged = judgedOf(local, attribute);
    if (judged === undefined) continue;
    if ("objections" in judged) objections.push(...judged.objections);
    else kept.set(judged.name, judged.value);
  }
  return { attributes: kept, objections };
}

function judgedOf(element: string, attribute: SaxesAttributeNS): Judged {
  const { uri, local, value } = attribute;
  if (uri === XMLNS || local === "xmlns") return undefined;
  if (uri === "") return ownOf(element, attribute);
  if (uri === XLINK) return linkOf(element, attribute);
  if (uri === XML && local === "lang") return { name: "xml:lang", value };
  if (uri === XML && local === "space") return { name: "xml:space", value };
  return ALIVE.has(uri) ? refused(attribute, FROM_OUTSIDE) : undefined;
}

/** Of XLink a browser heeds `href` alone; titles and roles of links are left out. */
function linkOf(element: string, attribute: SaxesAttributeNS): Judged {
  return attribute.local === "href" ? referenceOf(element, attribute, "xlink:href") : undefined;
}

function ownOf(element: string, attribute: SaxesAttributeNS): Judged {
  const { local, value } = attribute;
  const always = element === "style" ? SHEET_FOR_ALL[local] : undefined;
  if (always?.includes(value.trim()) === true) return undefined;
  const kind = local.startsWith("aria-") ? "words" : ATTRIBUTES.get(local);
  if (kind !== undefined && always === undefined) return valued(kind, element, attribute);
  if (IDLE_ATTRIBUTES.has(local) || local.startsWith("data-")) return undefined;
  return refused(attribute, /^on/i.test(local) ? FROM_OUTSIDE : `it has \`${local}\`, which no drawing here may`);
}

function valued(kind: AttributeKind, element: string, attribute: SaxesAttributeNS): Judged {
  const { local: name, value } = attribute;
  const matching = (pattern: RegExp): Judged =>
    pattern.test(value) ? { name, value } : refused(attribute, `\`${name}\` has a value that cannot stand there`);
  const styled = (found: Styled): Judged =>
    "css" in found
      ? { name, value: found.css }
      : { objections: found.objections.map((each) => ({ ...each, found: asTyped(attribute) })) };
  switch (kind) {
    case "words":
      return { name, value };
    case "measure":
      return matching(MEASURE);
    case "path":
      return matching(PATH);
    case "transform":
      return matching(TRANSFORM);
    case "reference":
      return referenceOf(element, attribute, name);
    case "styles":
      return styled(declarationsOf(value));
    case "property":
      return styled(presentedOf(value));
  }
}

function referenceOf(element: string, attribute: SaxesAttributeNS, name: string): Judged {
  const value = attribute.value.trim();
  return REFERRING.has(element) && LOCAL.test(value) ? { name, value } : refused(attribute, FROM_OUTSIDE);
}

function refused(attribute: SaxesAttributeNS, why: string): Judged {
  return { objections: [told("unsafe", asTyped(attribute), why, SAVE_PLAIN)] };
}

function asTyped({ name, value }: SaxesAttributeNS): string {
  return `${name}="${value.slice(0, 60)}"`;
}
