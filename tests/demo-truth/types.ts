/** Types of the program as its source states them: enough of them to say which words a value may be. */
import { posix } from "node:path";
import { parseSync } from "oxc-parser";
import { sourceFiles } from "../architecture/source.ts";

/** A node of the parser, whatever its kind. */
export interface Node {
  readonly type: string;
  readonly [part: string]: unknown;
}

/** A type, and the file in which its names mean what they mean. */
export interface Stated {
  readonly node: Node;
  readonly file: string;
}

interface Named {
  readonly declared: ReadonlyMap<string, Node>;
  /** By its name in the file: where it comes from, and by which name it goes there. */
  readonly imported: ReadonlyMap<string, readonly [file: string, name: string]>;
  readonly from: readonly string[];
}

const FILES = new Map(sourceFiles("src").map(({ path, text }) => [path, text]));
const read = new Map<string, Named>();

const asNode = (value: unknown): Node => value as Node;
const asNodes = (value: unknown): readonly Node[] => value as readonly Node[];
export const nameOf = (node: unknown): string => String(asNode(node)["name"]);

function namesIn(file: string): Named {
  const known = read.get(file);
  if (known) return known;
  const { program } = parseSync(file, FILES.get(file) ?? "");
  const [declared, imported] = [new Map<string, Node>(), new Map<string, readonly [string, string]>()];
  const from: string[] = [];
  for (const each of asNodes(program.body)) {
    const source = each["source"]
      ? posix.join(posix.dirname(file), String(asNode(each["source"])["value"]))
      : undefined;
    if (source !== undefined && each.type === "ExportAllDeclaration") from.push(source);
    else if (source !== undefined)
      for (const one of asNodes(each["specifiers"] ?? []))
        if (one["local"])
          imported.set(nameOf(one["exported"] ?? one["local"]), [source, nameOf(one["imported"] ?? one["local"])]);
    const said = asNode(each["declaration"] ?? each);
    if (said.type === "VariableDeclaration")
      for (const one of asNodes(said["declarations"])) declared.set(nameOf(one["id"]), asNode(one["init"]));
    else if (said["id"]) declared.set(nameOf(said["id"]), said);
  }
  const names = { declared, imported, from };
  read.set(file, names);
  return names;
}

/** What a name means in a file of the program; undefined where it comes from elsewhere. */
export function meaning(name: string, file: string): Stated | undefined {
  if (!FILES.has(file)) return undefined;
  const { declared, imported, from } = namesIn(file);
  const node = declared.get(name);
  if (node) return { node, file };
  const [elsewhere, there] = imported.get(name) ?? [];
  if (elsewhere !== undefined && there !== undefined) return meaning(there, elsewhere);
  return from.map((one) => meaning(name, one)).find((found) => found !== undefined);
}

/** Strings of a list that never changes: `["a", ...OTHERS] as const`. */
function wordsOfList({ node, file }: Stated): readonly string[] {
  if (node.type === "TSAsExpression") return wordsOfList({ node: asNode(node["expression"]), file });
  if (node.type !== "ArrayExpression") return [];
  return asNodes(node["elements"]).flatMap((one) => {
    if (one.type === "Literal") return [String(one["value"])];
    const spread = one.type === "SpreadElement" ? meaning(nameOf(one["argument"]), file) : undefined;
    return spread ? wordsOfList(spread) : [];
  });
}

/** The property of an object's type by its name. */
const propertyOf = (of: Stated, name: string): Stated | undefined =>
  properties(of).find((one) => one.name === name)?.stated;

/** What `A["b"]`, `(typeof A)[number]` and names stand for in the end. */
export function resolved({ node, file }: Stated): Stated | undefined {
  if (node.type === "TSTypeReference") {
    const found = node["typeArguments"] ? undefined : meaning(nameOf(node["typeName"]), file);
    return found && resolved(found);
  }
  if (node.type === "TSTypeAliasDeclaration") return resolved({ node: asNode(node["typeAnnotation"]), file });
  if (node.type === "TSParenthesizedType") return resolved({ node: asNode(node["typeAnnotation"]), file });
  if (node.type !== "TSIndexedAccessType") return { node, file };
  const [of, index] = [asNode(node["objectType"]), asNode(node["indexType"])];
  if (index.type !== "TSLiteralType") return { node, file };
  const owner = resolved({ node: of, file });
  const found = owner && propertyOf(owner, String(asNode(index["literal"])["value"]));
  return found && resolved(found);
}

/** The words that a type allows, where it allows nothing else; undefined otherwise. */
export function wordsOf(stated: Stated): readonly string[] | undefined {
  const found = resolved(stated);
  if (!found) return undefined;
  const { node, file } = found;
  if (node.type === "TSUnionType") {
    const each = asNodes(node["types"])
      .filter(({ type }) => type !== "TSUndefinedKeyword")
      .map((one) => wordsOf({ node: one, file }));
    return each.every((one) => one !== undefined) ? [...new Set(each.flat())] : undefined;
  }
  if (node.type === "TSLiteralType") {
    const { value } = asNode(node["literal"]);
    return typeof value === "string" ? [value] : undefined;
  }
  if (node.type !== "TSIndexedAccessType") return undefined;
  const of = asNode(node["objectType"]);
  const query = of.type === "TSParenthesizedType" ? asNode(of["typeAnnotation"]) : of;
  const list = query.type === "TSTypeQuery" ? meaning(nameOf(query["exprName"]), file) : undefined;
  const words = list ? wordsOfList(list) : [];
  return words.length > 0 ? words : undefined;
}

export interface Property {
  readonly name: string;
  readonly stated: Stated;
  readonly optional: boolean;
}

/** Of an interface with what it extends, a type written out, or several of both. */
export function properties(stated: Stated): readonly Property[] {
  const found = resolved(stated);
  if (!found) return [];
  const { node, file } = found;
  if (node.type === "TSIntersectionType")
    return asNodes(node["types"]).flatMap((one) => properties({ node: one, file }));
  const own = node.type === "TSInterfaceDeclaration" ? asNode(node["body"])["body"] : node["members"];
  if (node.type !== "TSInterfaceDeclaration" && node.type !== "TSTypeLiteral") return [];
  const above = asNodes(node["extends"] ?? []).flatMap((one) => {
    const parent = meaning(nameOf(one["expression"]), file);
    return parent ? properties(parent) : [];
  });
  const members = asNodes(own).filter(({ type }) => type === "TSPropertySignature");
  return [
    ...above,
    ...members.map((one) => ({
      name: nameOf(one["key"]),
      stated: { node: asNode(asNode(one["typeAnnotation"])["typeAnnotation"]), file },
      optional: one["optional"] === true,
    })),
  ];
}

/** What is in a list or a map of the type, or the arms of it; nothing where it is none. */
export function within(stated: Stated): readonly Stated[] {
  const { node, file } = resolved(stated) ?? stated;
  const of = (...nodes: readonly unknown[]): Stated[] => nodes.map((one) => ({ node: asNode(one), file }));
  if (node.type === "TSUnionType" || node.type === "TSIntersectionType") return of(...asNodes(node["types"]));
  if (node.type === "TSArrayType") return of(node["elementType"]);
  if (node.type === "TSTypeOperator") return of(node["typeAnnotation"]);
  if (node.type === "TSTupleType")
    return of(
      ...asNodes(node["elementTypes"]).map((one) => (one.type === "TSNamedTupleMember" ? one["elementType"] : one)),
    );
  if (node.type !== "TSTypeReference" || !node["typeArguments"]) return [];
  const of_ = asNodes(asNode(node["typeArguments"])["params"]);
  const name = nameOf(node["typeName"]);
  if (name === "ReadonlyMap") return of(of_[1]);
  return ["Omit", "Pick", "Readonly", "NonNullable"].includes(name) ? of(of_[0]) : [];
}
