/** Links into an editor: a setting, and none without it. */
import { join, resolve } from "node:path";
import type { Place } from "../problem.ts";

/** From a pattern such as `vscode://file{path}:{line}:{column}`. */
export type EditorLink = (place: Place) => string;

/** Undefined where the pattern names no path, or would have the browser itself run or fetch something. */
export function editorLink(pattern: string, content: string): EditorLink | undefined {
  const scheme = /^([a-z][a-z0-9+.-]*):/iu.exec(pattern)?.[1]?.toLowerCase();
  if (scheme === undefined || RUN_BY_BROWSERS.has(scheme) || !pattern.includes("{path}")) return undefined;
  const root = resolve(content);
  return ({ file, line, column }) =>
    pattern
      .replace("{line}", String(line))
      .replace("{column}", String(column))
      .replace("{path}", () => encodeURI(join(root, file)).replaceAll("#", "%23").replaceAll("?", "%3F"));
}

const RUN_BY_BROWSERS = new Set(["javascript", "data", "vbscript", "blob", "http", "https", "ws", "wss", "about"]);
