/** What became of each file from seal to seal, and since. */
import type { Tellings } from "../finding.ts";
import type { Seal } from "./chain.ts";
import type { RecordDigests } from "./record-files.ts";

/** The seal in words: those after the first of a day have its number. */
export function sealWords({ date, manifest }: Pick<Seal, "date" | "manifest">): string {
  const [, number] = /-(\d+)\.sha256$/.exec(manifest.slice(`seals/${date}`.length)) ?? [];
  return number === undefined ? `the seal of ${date}` : `the seal of ${date} (number ${number} of that day)`;
}

/** Which seals held a file with the same bytes, one after the other. */
interface Stretch {
  readonly digest: string;
  readonly first: Seal;
  last: Seal;
}

/** Takes in one seal after the other; it grows with the versions of files, not with the seals. */
export class History {
  readonly #findings: Tellings;
  readonly #stretches = new Map<string, Stretch[]>();
  #last: { readonly seal: Seal; readonly digests: RecordDigests } | undefined;

  constructor(findings: Tellings) {
    this.#findings = findings;
  }

  /** Tells what was changed, renamed or taken away between the seal before and this one. What was only added is as it should be. */
  add(seal: Seal, digests: RecordDigests): void {
    if (this.#last !== undefined) this.#between(this.#last.seal, this.#last.digests, seal, digests);
    for (const [path, digest] of digests) {
      const known = this.#stretches.get(path) ?? [];
      const latest = known.at(-1);
      if (latest !== undefined && latest.digest === digest && latest.last === this.#last?.seal) latest.last = seal;
      else this.#stretches.set(path, [...known, { digest, first: seal, last: seal }]);
    }
    this.#last = { seal, digests };
  }

  /** Holds the record as it is now against the last seal: what is missing, renamed or changed is a fault, what was added is none. */
  tellNow(now: RecordDigests): void {
    if (this.#last === undefined) return;
    const { seal, digests } = this.#last;
    const renamed = renamings(digests, now);
    const since = sealWords(seal);
    for (const [path, digest] of digests) {
      const found = now.get(path);
      const name = renamed.get(path);
      if (found === undefined && name !== undefined)
        this.#findings.fault(
          "missing",
          path,
          `renamed since ${since}: the same bytes are at ${name} now${this.#heldSince(path)}`,
        );
      else if (found === undefined)
        this.#findings.fault("missing", path, `missing since ${since}${this.#heldSince(path)}`);
      else if (found !== digest)
        this.#findings.fault(
          "changed",
          path,
          `changed since ${since}${this.#asBefore(path, found) ?? this.#heldSince(path)}`,
        );
    }
    const names = new Set(renamed.values());
    for (const path of now.keys())
      if (!digests.has(path) && !names.has(path))
        this.#findings.note(
          "not sealed yet",
          path,
          `added since ${since}; not sealed yet${this.#asBefore(path, now.get(path)) ?? ""}`,
        );
  }

  #between(former: Seal, before: RecordDigests, next: Seal, after: RecordDigests): void {
    const when = `between ${sealWords(former)} and ${sealWords(next)}`;
    const renamed = renamings(before, after);
    for (const [path, digest] of before) {
      const later = after.get(path);
      const name = renamed.get(path);
      if (later !== digest)
        this.#findings.note(
          "changed between seals",
          path,
          later !== undefined
            ? `changed ${when}`
            : name === undefined
              ? `taken away ${when}`
              : `renamed to ${name} ${when}`,
        );
    }
  }

  /** Since when the file had stood under seal without a change, where that is longer than since the last one. */
  #heldSince(path: string): string {
    const stretch = this.#stretches.get(path)?.at(-1);
    return stretch === undefined || stretch.first === stretch.last
      ? ""
      : `; it had been the same since ${sealWords(stretch.first)}`;
  }

  #asBefore(path: string, digest: string | undefined): string | undefined {
    const stretch = this.#stretches.get(path)?.findLast((each) => each.digest === digest);
    return stretch === undefined ? undefined : `; it is as it was at ${sealWords(stretch.last)}`;
  }
}

/** New names by the old, of files that are gone and of which exactly one new file has the bytes. */
function renamings(before: RecordDigests, after: RecordDigests): ReadonlyMap<string, string> {
  const gone = pathsByDigest(before, after);
  const come = pathsByDigest(after, before);
  return new Map(
    [...gone].flatMap(([digest, [path, ...others]]) => {
      const [name, ...more] = come.get(digest) ?? [];
      return path === undefined || name === undefined || others.length + more.length > 0 ? [] : [[path, name] as const];
    }),
  );
}

function pathsByDigest(files: RecordDigests, without: RecordDigests): ReadonlyMap<string, string[]> {
  const paths = new Map<string, string[]>();
  for (const [path, digest] of files) if (!without.has(path)) paths.set(digest, [...(paths.get(digest) ?? []), path]);
  return paths;
}
