import type { Tellings } from "../finding.ts";
import { differenceOf, foldedPath, pathFault } from "../safe-path.ts";
import { Damaged, type Member, MOST_FILES } from "./source.ts";

/** Gathers what an archive lists, telling what is unsafe in it. */
export class Members {
  readonly #findings: Tellings;
  readonly #byFolded = new Map<string, string>();
  readonly #members = new Map<string, Member>();
  readonly #folders = new Set<string>();
  #seen = 0;

  constructor(findings: Tellings) {
    this.#findings = findings;
  }

  /** `path` is from the archive's root. */
  add(path: string, size: number): void {
    this.count();
    const fault = pathFault(path) ?? (/[\ufffd\p{Cs}]/u.test(path) ? "is not written in UTF-8" : undefined);
    if (fault !== undefined)
      return this.#findings.fault(
        fault.includes("UTF-8") ? "encoding" : "unsafe path",
        path,
        `this path ${fault}; it was not read`,
      );
    if (this.#members.has(path)) return this.#findings.fault("same name", path, "this name stands here twice");
    this.#members.set(path, { path, size });
    const folded = foldedPath(path);
    const other = this.#byFolded.get(folded);
    if (other === undefined) this.#byFolded.set(folded, path);
    else
      this.#findings.fault(
        "same name",
        path,
        `this name and ${other} ${differenceOf(path, other)}; on many disks they are one file`,
      );
  }

  /** A folder by itself, which archives may name and manifests cannot. One without a file below it is told at the end. */
  addFolder(path: string): void {
    this.count();
    const plain = path.replace(/\/+$/, "");
    const fault = plain === "" || plain === "." ? undefined : pathFault(plain);
    if (fault !== undefined) return this.#findings.fault("unsafe path", path, `this path ${fault}; it was not read`);
    if (plain !== "" && plain !== ".") this.#folders.add(plain);
  }

  /** Something that is no regular file. */
  refuse(path: string, what: string): void {
    this.count();
    this.#findings.fault("link", path, `this is ${what}, not a file; it was not followed`);
  }

  count(): void {
    this.#seen += 1;
    if (this.#seen > MOST_FILES) throw new Damaged(`holds more than ${MOST_FILES} files`);
  }

  /** Sorted by path. A file whose name is also that of a folder is told. */
  end(): Member[] {
    const parents = new Set<string>();
    for (const path of [...this.#members.keys(), ...this.#folders])
      for (let at = path.lastIndexOf("/"); at > 0; at = path.lastIndexOf("/", at - 1)) parents.add(path.slice(0, at));
    for (const path of this.#folders) {
      const file = this.#byFolded.get(foldedPath(path));
      if (file !== undefined) this.#findings.fault("same name", path, `${file} is a file and also a folder`);
      else if (!parents.has(path))
        this.#findings.note("not vouched for", path, "an empty folder, which no manifest can vouch for");
    }
    const members = [...this.#members.values()].sort((a, b) => (a.path < b.path ? -1 : 1));
    for (const { path } of members) {
      for (let at = path.lastIndexOf("/"); at > 0; at = path.lastIndexOf("/", at - 1)) {
        const above = this.#byFolded.get(foldedPath(path.slice(0, at)));
        if (above !== undefined)
          this.#findings.fault("same name", path, `${above} is a file and also a folder that this lies in`);
      }
    }
    return members;
  }
}

/** Every archive has one folder at its root, which is the bag; its name is cut off here. */
export function withoutBaseFolder(
  members: readonly Member[],
  findings: Tellings,
): { readonly base: string; readonly members: Member[] } {
  const first = members[0]?.path ?? "";
  const base = first.slice(0, first.indexOf("/") + 1);
  if (base === "" || !members.every(({ path }) => path.startsWith(base))) {
    if (members.length > 0)
      findings.fault(
        "container",
        ".",
        "the bag does not lie in one folder of its own within the archive, as RFC 8493 asks",
      );
    return { base: "", members: [...members] };
  }
  return { base, members: members.map(({ path, size }) => ({ path: path.slice(base.length), size })) };
}
