/** Every id of the record, where it stands and what it names. */
import type { Place, Problem } from "../problem.ts";
import type { Files } from "./filed.ts";
import { aKind } from "../facts/kinds.ts";
import { likest, nearest } from "../facts/nearest.ts";
import { type Fault, meaning, onlyYouKnow, shown } from "../facts/reading.ts";
import { valueAt } from "./schema/issues.ts";
import type { Data, Path } from "./text/yaml.ts";
import type { Kind, Ref } from "../facts/types.ts";

export interface Named extends Ref {
  /** Looked up only where there is something to say of it. */
  readonly place: () => Place;
}

export class Ids {
  readonly #byId = new Map<string, Named>();
  readonly #byKind = new Map<Kind, Map<string, Named>>();
  readonly problems: Problem[] = [];
  readonly #folded = new Map<string, Named>();

  add(kind: Kind, id: string, place: () => Place): void {
    const named = { kind, id, place };
    const other = this.#folded.get(id.toLowerCase());
    if (other) {
      this.problems.push({ ...place(), ...twice(named, other) });
      return;
    }
    this.#folded.set(id.toLowerCase(), named);
    this.#byId.set(id, named);
    let ofKind = this.#byKind.get(kind);
    if (!ofKind) this.#byKind.set(kind, (ofKind = new Map()));
    ofKind.set(id, named);
  }

  get(id: string): Named | undefined {
    return this.#byId.get(id);
  }

  has(kind: Kind, id: string): boolean {
    return this.#byKind.get(kind)?.has(id) ?? false;
  }

  of(kind: Kind): IterableIterator<string> {
    return (this.#byKind.get(kind) ?? new Map<string, Named>()).keys();
  }

  all(): IterableIterator<Named> {
    return this.#byId.values();
  }

  /** What is wrong with an id that should name a thing of one kind, or of one of two. */
  fault(kinds: readonly Kind[], id: string): Fault | undefined {
    if (kinds.some((kind) => this.has(kind, id))) return undefined;
    const names = kinds.map(aKind).join(" or ");
    const known = kinds.flatMap((kind) => [...this.of(kind)]);
    const other = this.#byId.get(id);
    const meant = nearest(
      id,
      known.filter((other) => (this.#byId.get(other)?.kind === "piece") === other.includes("/")),
    );
    const message = other
      ? `${id} is ${aKind(other.kind)}; ${names} belongs here`
      : `no ${kinds.join(" or ")} "${shown(id)}" is in the record`;
    const expected =
      known.length === 0 ? `the id of ${names}; there is none yet` : `the id of ${names}: ${likest(id, known)}`;
    const mending =
      meant === undefined ? onlyYouKnow(`name one that the record has, or add ${whereTo(kinds[0])}`) : meaning(meant);
    return { code: "unknown-id", message, expected, found: shown(id), ...mending };
  }
}

/** What a builder may state again in order to correct it. */
const CORRECTED: readonly Kind[] = ["batch", "piece", "departure", "open item"];

function twice(named: Named, other: Named): Fault {
  const { file, line, column } = other.place();
  const message =
    other.id === named.id
      ? `the id ${named.id} is already that of ${aKind(other.kind)}`
      : `the ids ${named.id} and ${other.id} differ only in capital letters`;
  const corrects =
    other.id === named.id && other.kind === named.kind && CORRECTED.includes(named.kind) && file !== named.place().file;
  return {
    code: "duplicate-id",
    message,
    expected: "an id for each thing in the record",
    found: `${named.id} here, ${other.id} at ${file}:${line}:${column}`,
    mend: corrects
      ? "give one of them another id; if this corrects the earlier entry, state it under `amends`"
      : "give one of them another id",
  };
}

const PLACES: Partial<{ readonly [kind in Kind]: string }> = {
  person: "the person to `people` in aircraft.md",
  assembly: "a file to assemblies/",
  adhesive: "a file to adhesives/",
  finish: "a file to finishes/",
  procedure: "a file to procedures/",
  lot: "a file to lots/",
  trial: "a file to trials/",
  joint: "it to `joints` of its assembly",
  "hold point": "it to `hold_points` of its assembly",
  departure: "it to `departures` of an entry",
  "open item": "it to `open_items` of an entry",
  batch: "it to `batches` of an entry",
  piece: "it to `pieces` of its batch",
};

function whereTo(kind: Kind | undefined): string {
  return (kind && PLACES[kind]) ?? "it";
}

/** Ids within files, by the key of their list; the ids of files are their names. */
const WITHIN: readonly (readonly [keyof Files, Kind, Path])[] = [
  ["aircraft", "person", ["people"]],
  ["assembly", "joint", ["joints"]],
  ["assembly", "hold point", ["hold_points"]],
  ["entry", "batch", ["batches"]],
  ["entry", "departure", ["departures"]],
  ["entry", "open item", ["open_items", "raise"]],
];

/** Ids are taken from what stands in the files, sound or not, so that one problem does not make others of it. */
export function collectIds(files: Files): Ids {
  const ids = new Ids();
  for (const kind of ["assembly", "adhesive", "finish", "procedure", "lot", "trial", "entry"] as const) {
    for (const { id, file } of files[kind]) ids.add(kind, id, () => ({ file, line: 1, column: 1 }));
  }
  for (const [fileKind, kind, path] of WITHIN) {
    for (const { data, rawAt } of files[fileKind]) {
      for (const [id, at] of idsIn(data, path)) {
        ids.add(kind, id, () => rawAt([...at, "id"]));
        if (kind === "batch")
          for (const [piece, pieceAt] of idsIn(data, [...at, "pieces"]))
            ids.add("piece", piece, () => rawAt([...pieceAt, "id"]));
      }
    }
  }
  return ids;
}

const ID: Path = ["id"];

function idsIn(data: Data, path: Path): (readonly [string, Path])[] {
  const list = valueAt(data, path);
  if (!Array.isArray(list)) return [];
  return (list as readonly Data[]).flatMap((item, index) => {
    const id = valueAt(item, ID);
    return typeof id === "string" && id !== "" ? [[id, [...path, index]] as const] : [];
  });
}
