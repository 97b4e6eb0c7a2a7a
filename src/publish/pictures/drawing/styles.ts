import type { CssNode, ParseOptions } from "css-tree";
import generate from "css-tree/generator";
import parse from "css-tree/parser";
import walk from "css-tree/walker";
import { inThousands, LIMITS } from "../../../facts/limits.ts";
import { FUNCTIONS, IDLE_PROPERTIES, PROPERTIES } from "./allowed.ts";
import { told, type Told } from "./objection.ts";

/** Styles as they will be written, or all that is against them. */
export type Styled = { readonly css: string } | { readonly objections: readonly Told[] };

const MEND = "in the drawing program, give colours and lines to the shapes themselves, and save it as plain SVG";

/** What may stand in a value. */
const VALUES: ReadonlySet<CssNode["type"]> = new Set<CssNode["type"]>([
  "Value",
  "Identifier",
  "Number",
  "Dimension",
  "Percentage",
  "Hash",
  "Operator",
  "String",
  "Url",
  "Function",
]);
const SELECTORS: ReadonlySet<CssNode["type"]> = new Set<CssNode["type"]>([
  "StyleSheet",
  "Rule",
  "SelectorList",
  "Selector",
  "TypeSelector",
  "ClassSelector",
  "IdSelector",
  "Combinator",
  "Block",
  "Declaration",
]);

/** The text of a `style` element. */
export function sheetOf(css: string): Styled {
  return lookedAt(css, "stylesheet");
}

/** The text of a `style` attribute. */
export function declarationsOf(css: string): Styled {
  return lookedAt(css, "declarationList");
}

/** The value of an attribute that is a property too. */
export function presentedOf(css: string): Styled {
  return css.trim() === "" ? { css: "" } : lookedAt(css, "value");
}

function lookedAt(css: string, context: NonNullable<ParseOptions["context"]>): Styled {
  const most = LIMITS.drawing.css;
  if (css.length > most)
    return { objections: [told("large", css, `its styles are longer than ${inThousands(most)} characters`, MEND)] };
  if (/[\\\0]/.test(css)) return refused(css, "its styles have escapes, behind which anything can stand");
  const tree = treeOf(css, context);
  if (tree === undefined) return refused(css, "its styles cannot be read");
  withoutIdle(tree);
  const objections: Told[] = [];
  walk(tree, (node) => {
    const found = against(node);
    objections.push(...found);
    return found.length > 0 ? walk.skip : undefined;
  });
  return objections.length > 0 ? { objections } : { css: generate(tree) };
}

function treeOf(css: string, context: NonNullable<ParseOptions["context"]>): CssNode | undefined {
  let isBroken = false;
  try {
    const tree = parse(css, { context, parseCustomProperty: true, onParseError: () => (isBroken = true) });
    return isBroken ? undefined : tree;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}

/** Takes out what no browser draws by, with whatever value it has. */
function withoutIdle(tree: CssNode): void {
  walk(tree, {
    visit: "Declaration",
    enter: ({ property }, item, list) => {
      if (list !== null && item !== null && isIdle(property)) list.remove(item);
    },
  });
}

function isIdle(property: string): boolean {
  return /^-(?!webkit-|moz-|ms-|o-)[a-z]/i.test(property) || IDLE_PROPERTIES.has(property.toLowerCase());
}

function against(node: CssNode): Told[] {
  if (node.type === "Declaration" && !PROPERTIES.has(node.property.toLowerCase()))
    return [objection(node, `its styles set \`${node.property}\`, which no drawing here may`)];
  if (node.type === "Url" && !node.value.trim().startsWith("#"))
    return [objection(node, "its styles fetch something from outside itself")];
  if (node.type === "Function" && !FUNCTIONS.has(node.name.toLowerCase()))
    return [objection(node, `its styles use \`${node.name}()\`, which no drawing here may`)];
  if (node.type === "DeclarationList" || VALUES.has(node.type) || SELECTORS.has(node.type)) return [];
  return [objection(node, "its styles hold more than plain rules and values")];
}

function objection(node: CssNode, why: string): Told {
  return told("unsafe", generate(node), why, MEND);
}

function refused(css: string, why: string): Styled {
  return { objections: [told("unsafe", css, why, MEND)] };
}
