import { SaxesParser, type SaxesTagNS } from "saxes";
import { LIMITS } from "../../../facts/limits.ts";
import { ALIVE, ELEMENTS, NOTES, SVG, WORDED } from "./allowed.ts";
import { attributesOf } from "./attributes.ts";
import { type Objection, told, type Told } from "./objection.ts";
import { sheetOf } from "./styles.ts";
import type { DrawnElement } from "./tree.ts";

interface Parsed {
  readonly root: DrawnElement | undefined;
  readonly objections: readonly Objection[];
}

type Place = Pick<Objection, "line" | "column">;

const NO_MARKUP = "save it as plain SVG, without a document type of its own";
const SHAPES_ALONE =
  "save it as plain SVG with its pictures and scripts taken out, or as PNG and name that file instead";

class Stop extends Error {}

/**
 * Builds what may be written of a drawing, event by event of the XML parser, and notes all that is against the rest.
 */
class Builder {
  readonly objections: Objection[] = [];
  root: DrawnElement | undefined;
  readonly #parser = new SaxesParser({ xmlns: true });
  readonly #source: string;
  readonly #open: DrawnElement[] = [];
  /** Elements left out that are open, the outermost first counted. */
  #leftOut = 0;
  #nodes = 0;
  #namespace: string = SVG;
  #start: Place = { line: 1, column: 1 };

  constructor(source: string) {
    this.#source = source;
    this.#parser.on("error", (error) => this.#fail(error));
    this.#parser.on("xmldecl", ({ encoding }) => this.#declared(encoding));
    this.#parser.on("doctype", (doctype) => this.#doctype(doctype));
    this.#parser.on("processinginstruction", ({ target }) => this.#instruction(target));
    this.#parser.on("opentagstart", () => (this.#start = this.#placeOf("<")));
    this.#parser.on("opentag", (tag) => this.#opened(tag));
    this.#parser.on("closetag", () => this.#closed());
    this.#parser.on("text", (text) => this.#text(text));
    this.#parser.on("cdata", (text) => this.#text(text));
  }

  run(): void {
    try {
      this.#parser.write(this.#source).close();
    } catch (error) {
      if (!(error instanceof Stop)) throw error;
    }
  }

  #declared(encoding: string | undefined): void {
    if (encoding === undefined || /^(utf-?8|us-ascii)$/i.test(encoding) || !/[^\x00-\x7f]/.test(this.#source)) return;
    this.#object(
      told("unreadable", encoding, "the file says that it is not in UTF-8", "save it in UTF-8"),
      this.#placeOf("<"),
    );
  }

  #doctype(doctype: string): void {
    const opens = this.#placeOf("<!DOCTYPE");
    const within = /\[([\s\S]*)/.exec(doctype)?.[1];
    if (within === undefined) return;
    this.#object(
      told("unsafe", within.trim().split(/\s/)[0] ?? "", "the drawing defines entities or other markup", NO_MARKUP),
      opens,
    );
  }

  #instruction(target: string): void {
    if (!/^xml-?stylesheet$/i.test(target)) return;
    const found = `<?${target}`;
    this.#object(told("unsafe", found, "the drawing takes styles from outside itself", NO_MARKUP), this.#placeOf("<?"));
  }

  #opened(tag: SaxesTagNS): void {
    this.#count();
    if (this.#leftOut > 0) this.#leftOut += 1;
    else if (this.#open.length === 0) this.#rooted(tag);
    else if (this.#isSvg(tag) && ELEMENTS.has(tag.local)) this.#kept(tag);
    else this.#dropped(tag);
    if (this.#open.length + this.#leftOut > LIMITS.drawing.depth)
      this.#end(
        told(
          "large",
          tag.name,
          `elements stand more than ${LIMITS.drawing.depth} deep in each other`,
          "ungroup some of them",
        ),
      );
  }

  /**
   * An `<svg>` that does not say its namespace can only be meant as SVG, with all in it that says none; it is written
   * with it.
   */
  #rooted(tag: SaxesTagNS): void {
    if (tag.uri === "" && tag.name === "svg") this.#namespace = "";
    if (tag.uri === this.#namespace && tag.local === "svg") return this.#kept(tag);
    const why = "this is no SVG drawing: its first element is not <svg>";
    return this.#end(told("unsafe", `<${tag.name}>`, why, "name an SVG file, or save the drawing as SVG"));
  }

  #kept(tag: SaxesTagNS): void {
    if (Object.keys(tag.attributes).length > LIMITS.drawing.attributes)
      this.#end(
        told(
          "large",
          `<${tag.name}>`,
          `it has more than ${LIMITS.drawing.attributes} attributes`,
          "save it anew as plain SVG",
        ),
      );
    const { attributes, objections } = attributesOf(tag);
    for (const each of objections) this.#object(each, this.#start);
    const element: DrawnElement = { name: tag.local, attributes, children: [], ...this.#start };
    this.#open.at(-1)?.children.push(element);
    this.root ??= element;
    this.#open.push(element);
  }

  #isSvg({ uri }: SaxesTagNS): boolean {
    return uri === SVG || uri === this.#namespace;
  }

  #dropped(tag: SaxesTagNS): void {
    const { uri, local, name } = tag;
    this.#leftOut = 1;
    if ((this.#isSvg(tag) && NOTES.has(local)) || (uri !== "" && !ALIVE.has(uri))) return;
    const why = `there is <${name}>, which is none of the shapes that a drawing here may be made of`;
    this.#object(told("unsafe", `<${name}>`, why, SHAPES_ALONE), this.#start);
  }

  #closed(): void {
    if (this.#leftOut > 0) this.#leftOut -= 1;
    else {
      const element = this.#open.pop();
      if (element?.name === "style") this.#styled(element);
    }
  }

  #styled(element: DrawnElement): void {
    const sheet = sheetOf(element.children.filter((child) => typeof child === "string").join(""));
    if ("css" in sheet) element.children.splice(0, element.children.length, sheet.css);
    else for (const each of sheet.objections) this.#object(each, element);
  }

  /** Words that stand where no browser shows them are left out; blanks stay, so that the file keeps its lines. */
  #text(text: string): void {
    const element = this.#open.at(-1);
    if (element === undefined || this.#leftOut > 0) return;
    this.#count();
    const isShown = WORDED.has(element.name) || element.name === "style";
    if (isShown || /^\s*$/.test(text)) element.children.push(text);
  }

  #count(): void {
    this.#nodes += 1;
    if (this.#nodes > LIMITS.drawing.nodes)
      this.#end(
        told(
          "large",
          `${LIMITS.drawing.nodes} elements`,
          "it has more elements than a page can show",
          "draw it with fewer, or save it as PNG and name that file instead",
        ),
      );
  }

  #fail(error: Error): void {
    const { line, column } = this.#parser;
    const why = error.message.replace(/^\d+:\d+: /, "").replace(/\.$/, "");
    const found = this.#source.slice(Math.max(0, this.#parser.position - 40), this.#parser.position);
    this.#object(
      told(
        "unreadable",
        found,
        `the XML cannot be read, or is cut short (${why})`,
        "copy the file again, or open it in the drawing program and save it anew as plain SVG",
      ),
      { line, column: Math.max(1, column) },
    );
    throw new Stop();
  }

  #end(reason: Told): void {
    this.#object(reason, this.#start);
    throw new Stop();
  }

  #object(reason: Told, { line, column }: Place): void {
    this.objections.push({ ...reason, line, column });
    if (this.objections.length >= LIMITS.drawing.objections) throw new Stop();
  }

  /**
   * Of the markup that the parser has just read past: it looks no farther back than that, so that a long line costs no
   * more than short ones.
   */
  #placeOf(opener: string): Place {
    const { position, columnIndex, line } = this.#parser;
    const at = Math.max(0, this.#source.lastIndexOf(opener, position - 1));
    const lineStart = position - columnIndex;
    if (at >= lineStart) return { line, column: at - lineStart + 1 };
    const breaks = this.#source.slice(at, position).split("\n").length - 1;
    return { line: line - breaks, column: at - this.#source.lastIndexOf("\n", at - 1) };
  }
}

/** Reads a drawing by a strict XML parser, with namespaces. */
export function parseDrawing(source: string): Parsed {
  const builder = new Builder(source);
  builder.run();
  return { root: builder.root, objections: builder.objections };
}
