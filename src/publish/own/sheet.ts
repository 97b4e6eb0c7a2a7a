import parse from "css-tree/parser";
import walk from "css-tree/walker";
import { LIMITS } from "../../facts/limits.ts";
import { placed, type Problem } from "../../problem.ts";
import { bytesOf } from "../../record/file-bytes.ts";
import { OWN_SHEET } from "../../record/own.ts";
import { readText } from "../../record/text/bytes.ts";

/** The sheet of one's own, if it stands in the record's folder `root`, or what keeps it from being taken. */
export function ownSheet(root: string): { readonly css: string; readonly problems: readonly Problem[] } {
  const bytes = bytesOf({ root }, OWN_SHEET, LIMITS.fileBytes);
  if ("problem" in bytes) return { css: "", problems: [bytes.problem] };
  const text = readText(OWN_SHEET, bytes);
  if ("problem" in text) return { css: "", problems: [text.problem] };
  const css = text.source.text;
  return { css, problems: problemsIn(css) };
}

function problemsIn(css: string): Problem[] {
  const problems: Problem[] = [];
  const told = (
    at: { line: number; column: number } | undefined,
    message: string,
    mend: string,
    found?: string,
  ): void =>
    void problems.push(
      placed(
        { file: OWN_SHEET, line: at?.line ?? 1, column: at?.column ?? 1 },
        { code: "own-sheet", message, expected: "CSS that needs no other file", mend, ...(found && { found }) },
      ),
    );
  const tree = parse(css, {
    positions: true,
    parseCustomProperty: true,
    onParseError: (error) =>
      told(error as unknown as { line: number; column: number }, `this is no CSS: ${error.message}`, "mend it here"),
  });
  walk(tree, (node) => {
    const at = node.loc?.start;
    if (node.type === "Atrule" && /^(?:import|font-face|namespace)$/i.test(node.name))
      told(
        at,
        "a sheet can ask for no other file",
        "leave it out: fonts are those of the reader's machine",
        `@${node.name}`,
      );
    if (node.type === "Url" && !node.value.startsWith("#"))
      told(
        at,
        "a sheet can ask for no other file",
        "leave the picture out, or show it as one of the record's on an own page",
        node.value,
      );
    if (node.type === "Raw" && /url\s*\(|image-set\s*\(/i.test(node.value))
      told(at, "a sheet can ask for no other file", "leave it out", node.value.trim());
    if (node.type === "Function" && /image-set$/i.test(node.name))
      told(at, "a sheet can ask for no other file", "leave it out", `${node.name}()`);
  });
  return problems;
}
