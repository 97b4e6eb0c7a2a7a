import { LIMITS } from "../../facts/limits.ts";
import { type Objection, told } from "./drawing/objection.ts";
import { parseDrawing } from "./drawing/parse.ts";
import { endlessIn } from "./drawing/repeats.ts";
import type { DrawnElement } from "./drawing/tree.ts";
import { written } from "./drawing/write.ts";

export interface Drawing {
  /** CSS pixels, from `viewBox` or from width and height. */
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

/**
 * A drawing fit to be published, written anew from what it was found to be made of: shapes, words and styles of an
 * allow-list. What drawing
 * programs note beside the picture (paths on a disk, names, settings) is left out. Whatever else draws, runs or could
 * fetch something
 * is an objection, and so is a file that is no XML, is cut short or beyond a bound; all of them are told.
 */
export function readDrawing(file: string | Uint8Array): Drawing | readonly Objection[] {
  const source = textOf(file);
  if (typeof source !== "string") return [source];
  const { root, objections } = parseDrawing(source);
  if (root === undefined || objections.length > 0) return objections;
  const size = sizeOf(root);
  const endless = endlessIn(root);
  const more = [...(size === undefined ? [sizeless(root)] : []), ...(endless === undefined ? [] : [repeated(endless)])];
  return size === undefined || more.length > 0 ? more : { ...size, svg: written(root) };
}

function textOf(file: string | Uint8Array): string | Objection {
  const start = { line: 1, column: 1 };
  if (file.length > LIMITS.drawing.bytes)
    return {
      ...start,
      ...told(
        "large",
        `${file.length} bytes`,
        `there are more than ${LIMITS.drawing.bytes / 1_000_000} MB of it`,
        "draw it with fewer points, or save it as PNG and name that file instead",
      ),
    };
  try {
    const text = typeof file === "string" ? file : new TextDecoder("utf-8", { fatal: true }).decode(file);
    return text.replace(/^\uFEFF/, "");
  } catch {
    return { ...start, ...told("unreadable", "other bytes", "the file is not in UTF-8", "save it as SVG in UTF-8") };
  }
}

function sizeless({ line, column }: DrawnElement): Objection {
  const why = "neither viewBox nor width and height are said in pixels, so a page cannot keep its place";
  return { line, column, ...told("unsafe", "<svg>", why, `give it one, such as viewBox="0 0 800 500"`) };
}

function repeated({ line, column, name }: DrawnElement): Objection {
  const why = `it repeats itself without end, or draws more than ${LIMITS.drawing.drawn} elements`;
  return { line, column, ...told("large", `<${name}>`, why, "draw with fewer copies of copies") };
}

function sizeOf({ attributes }: DrawnElement): { width: number; height: number } | undefined {
  const [, , width, height] = (attributes.get("viewBox") ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const size = { width: width ?? pixels(attributes.get("width")), height: height ?? pixels(attributes.get("height")) };
  const whole = (length: number): number => Math.max(1, Math.round(length));
  const isSize = (length: number): boolean => length > 0 && Number.isFinite(length);
  return isSize(size.width) && isSize(size.height)
    ? { width: whole(size.width), height: whole(size.height) }
    : undefined;
}

function pixels(length: string | undefined): number {
  return length !== undefined && /^\d+(\.\d+)?(px)?$/.test(length.trim()) ? Number.parseFloat(length) : Number.NaN;
}
