import { ALGORITHMS, type Digested, WEAK_ALGORITHMS } from "../digest.ts";
import type { Tellings } from "../finding.ts";
import { linesOf } from "../lines.ts";
import { manifestLineOf, pathDecoded } from "../manifest.ts";
import { differenceOf, foldedPath, pathFault } from "../safe-path.ts";
import type { Member } from "../source/source.ts";
import type { Declaration } from "./declaration.ts";

export interface ManifestFile {
  /** `manifest-sha256.txt` or `tagmanifest-sha256.txt` */
  readonly path: string;
  readonly algorithm: string;
  /** Whether it vouches for the files outside `data/`. */
  readonly isTag: boolean;
}

export function manifestFileOf(path: string): ManifestFile | undefined {
  const [, tag, algorithm] = /^(tag)?manifest-([a-z0-9-]+)\.txt$/i.exec(path) ?? [];
  return algorithm === undefined ? undefined : { path, algorithm: algorithm.toLowerCase(), isTag: tag !== undefined };
}

/** Files that are here, and what manifests say of them. It grows with the files, not with the manifests. */
export class Vouched {
  readonly #members: ReadonlyMap<string, Member>;
  readonly #folded: ReadonlyMap<string, string>;
  readonly #findings: Tellings;
  readonly #expected = new Map<string, Map<string, string>>();
  readonly #manifests: ManifestFile[] = [];
  #version = "1.0";

  constructor(members: readonly Member[], findings: Tellings) {
    this.#members = new Map(members.map((member) => [member.path, member]));
    this.#folded = new Map(members.map(({ path }) => [foldedPath(path), path]));
    this.#findings = findings;
  }

  /** Takes in a manifest of a known algorithm, line by line. */
  async read(manifest: ManifestFile, chunks: AsyncIterable<Uint8Array>, declared: Declaration): Promise<void> {
    this.#manifests.push(manifest);
    this.#version = declared.version;
    const oddities = new Map<string, { line: number; count: number }>();
    const odd = (words: string, line: number): void => {
      const known = oddities.get(words);
      oddities.set(words, { line: known?.line ?? line, count: (known?.count ?? 0) + 1 });
    };
    for await (const { text, number, end } of linesOf(chunks, declared.encoding)) {
      if (end !== "\n") odd(end === "" ? "has no line end" : "does not end with a line feed alone", number);
      const line = manifestLineOf(text, manifest.algorithm);
      if (line === undefined)
        this.#findings.fault(
          "form",
          `${manifest.path}:${number}`,
          `this line is not a ${manifest.algorithm} digest and a path`,
        );
      else {
        if (line.oddity !== undefined) odd(line.oddity, number);
        this.#take(manifest, number, line.path, line.digest);
      }
    }
    for (const [words, { line, count }] of oddities)
      this.#findings.note(
        "spelling",
        `${manifest.path}:${line}`,
        `this line${count > 1 ? ` and ${count - 1} more` : ""} ${words}`,
      );
  }

  #take(manifest: ManifestFile, number: number, written: string, digest: string): void {
    const place = `${manifest.path}:${number}`;
    const plain = written.replace(/^(?:\.\/)+/, "");
    const fault = pathFault(plain) ?? pathFault(pathDecoded(plain));
    if (fault !== undefined)
      return this.#findings.fault("unsafe path", place, `the path ${written} ${fault}; it was not read`);
    const path = this.#members.has(pathDecoded(plain)) ? pathDecoded(plain) : plain;
    if (path.startsWith("data/") === manifest.isTag)
      return this.#findings.fault(
        "form",
        place,
        manifest.isTag
          ? `${path} is below data/, which a tag manifest does not vouch for`
          : `${path} is not below data/, where a payload lies`,
      );
    if (manifest.isTag && manifestFileOf(path)?.isTag === true)
      return this.#findings.fault("form", place, `${path} is a tag manifest, for which no tag manifest vouches`);
    if (plain !== written) this.#findings.note("spelling", place, "the path begins with `./`");
    if (!this.#members.has(path)) return this.#tellMissing(place, path);
    const known = this.#expected.get(manifest.path) ?? new Map<string, string>();
    this.#expected.set(manifest.path, known);
    const before = known.get(path);
    if (before !== undefined && before !== digest)
      this.#findings.fault("form", place, `${path} stands here twice, with two digests`);
    else if (before !== undefined)
      this.#findings[this.#version === "1.0" ? "fault" : "note"](
        this.#version === "1.0" ? "form" : "spelling",
        place,
        `${path} stands here twice`,
      );
    known.set(path, digest);
  }

  #tellMissing(place: string, path: string): void {
    const alike = this.#folded.get(foldedPath(path));
    if (alike === undefined) this.#findings.fault("missing", path, `missing: ${place} vouches for it`);
    else
      this.#findings.fault(
        "same name",
        place,
        `${path} is not here; ${alike} is, and the two names ${differenceOf(path, alike)}`,
      );
  }

  /** Tells files that no manifest vouches for. By BagIt 1.0 each payload manifest names every payload file; before, one of them is enough. */
  tellUnlisted(): void {
    const ofPayload = this.#manifests.filter(({ isTag }) => !isTag);
    const ofTags = this.#manifests.filter(({ isTag }) => isTag);
    for (const path of this.#members.keys()) {
      const by = (manifests: readonly ManifestFile[]): ManifestFile[] =>
        manifests.filter((manifest) => this.#expected.get(manifest.path)?.has(path) === true);
      if (path.startsWith("data/")) this.#tellPayload(path, by(ofPayload), ofPayload);
      else if (manifestFileOf(path)?.isTag === true) continue;
      else if (ofTags.length > 0) this.#tellTag(path, by(ofTags), ofTags);
      else if (path !== "bagit.txt" && manifestFileOf(path) === undefined)
        this.#findings.note("not vouched for", path, "no tag manifest vouches for it: there is none");
    }
  }

  #tellPayload(path: string, by: readonly ManifestFile[], all: readonly ManifestFile[]): void {
    if (by.length === 0) this.#findings.fault("unexpected", path, "unexpected: no manifest vouches for it");
    else if (by.length < all.length && this.#version === "1.0")
      this.#findings.fault(
        "not vouched for",
        path,
        `${namesOf(all.filter((each) => !by.includes(each)))} does not name it, and every manifest must`,
      );
  }

  #tellTag(path: string, by: readonly ManifestFile[], all: readonly ManifestFile[]): void {
    const lacking = all.filter((each) => !by.includes(each));
    if (lacking.length === 0) return;
    if (manifestFileOf(path) !== undefined)
      this.#findings.fault("not vouched for", path, `${namesOf(lacking)} does not name it, and must`);
    else this.#findings.note("not vouched for", path, `${namesOf(lacking)} does not vouch for it`);
  }

  /** Which digests of a file must be reckoned. */
  algorithmsOf(path: string): string[] {
    return [
      ...new Set(
        this.#manifests
          .filter((manifest) => this.#expected.get(manifest.path)?.has(path) === true)
          .map(({ algorithm }) => algorithm),
      ),
    ];
  }

  /** Holds a file against all that vouch for it. */
  check(path: string, found: Digested): void {
    const against = this.#manifests.filter((manifest) => {
      const expected = this.#expected.get(manifest.path)?.get(path);
      return expected !== undefined && expected !== found.digests.get(manifest.algorithm);
    });
    if (against.length > 0)
      this.#findings.fault("changed", path, `changed: its bytes are not those that ${namesOf(against)} vouches for`);
  }

  /** The digest of a payload file by the strongest of its manifests. */
  strongest(path: string): { readonly algorithm: string; readonly digest: string } | undefined {
    const by = [...ALGORITHMS.keys()].reverse();
    const sorted = [...this.#manifests].sort((a, b) => by.indexOf(a.algorithm) - by.indexOf(b.algorithm));
    for (const { path: manifest, algorithm } of sorted) {
      const digest = this.#expected.get(manifest)?.get(path);
      if (digest !== undefined) return { algorithm, digest };
    }
    return undefined;
  }

  /** What a payload manifest of this algorithm says of a file. */
  digestOf(path: string, algorithm: string): string | undefined {
    const manifest = this.#manifests.find((each) => !each.isTag && each.algorithm === algorithm);
    return manifest === undefined ? undefined : this.#expected.get(manifest.path)?.get(path);
  }

  tellWeak(): void {
    const payload = this.#manifests.filter(({ isTag }) => !isTag);
    if (payload.length > 0 && payload.every(({ algorithm }) => WEAK_ALGORITHMS.has(algorithm))) {
      this.#findings.note(
        "not checked",
        namesOf(payload),
        "its algorithm shows a mistake, but not a change that someone made with skill",
      );
    }
  }
}

function namesOf(manifests: readonly ManifestFile[]): string {
  return manifests
    .map(({ path }) => path)
    .sort()
    .join(" and ");
}
