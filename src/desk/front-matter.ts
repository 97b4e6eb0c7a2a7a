/** A file of the record as it is written: facts as YAML by the library, and what may still be said as comments. */
import { plainly } from "../problem.ts";
import { stringify, type Tags } from "yaml";

/** Plain data: text, lists and blocks. */
export type Facts = { readonly [key: string]: Fact };
type Fact = string | readonly Fact[] | Facts;

/**
 * `within` are comments that belong to the last of the facts, and are as far to the right as it is.
 * Whatever an older reader of YAML would take for something else than text (`no`, `12:30`, `null`) stands in quotation
 * marks, so that each editor reads the same. What two facts share stands in each: a record takes no names of YAML.
 */
export function fileText(facts: Facts, remarks: readonly string[], within: readonly string[] = []): string {
  const yaml = stringify(facts, {
    version: "1.1",
    lineWidth: 0,
    aliasDuplicateObjects: false,
    customTags: (tags) => tags.filter(isNoDay),
  });
  const comments = remarks.map((line) => `${`# ${plainly(line)}`.trimEnd()}\n`).join("");
  return `---\n${yaml}${within.map((line) => `${plainly(line)}\n`).join("")}${comments}---\n`;
}

/** Days stand as they are typed everywhere else. */
const isNoDay = (tag: Tags[number]): boolean => typeof tag === "string" || tag.tag !== "tag:yaml.org,2002:timestamp";
