/** What an archive is found to be. A fault means that something is not as it was vouched for, or cannot be checked; a note does not. */
export type FindingKind =
  | "unsafe path"
  | "same name"
  | "link"
  | "encoding"
  | "form"
  | "container"
  | "too much"
  | "changed"
  | "missing"
  | "unexpected"
  | "not vouched for"
  | "not fetched"
  | "count"
  | "chain"
  | "signature"
  | "stamp"
  | "not sealed yet"
  | "changed between seals"
  | "spelling"
  | "not checked"
  | "group";

export interface Finding {
  readonly kind: FindingKind;
  readonly severity: "fault" | "note";
  /** A path within the archive, with a line where it is one, made fit for a terminal. */
  readonly place: string;
  readonly message: string;
}

/** Where what is found is told. */
export type Tellings = Pick<Findings, "fault" | "note">;

/** So many of one kind are kept; the rest are counted, so that no archive can fill the memory with what is wrong with it. */
const KEPT = 100;

export class Findings {
  readonly #kept: Finding[] = [];
  readonly #counts = new Map<string, number>();
  #faults = 0;

  fault(kind: FindingKind, place: string, message: string): void {
    this.#faults += 1;
    this.#add({ kind, severity: "fault", place: printable(place), message: printable(message) });
  }

  note(kind: FindingKind, place: string, message: string): void {
    this.#add({ kind, severity: "note", place: printable(place), message: printable(message) });
  }

  /** The same list for a part of the archive, whose name goes before each place. */
  within(part: string): Tellings {
    return {
      fault: (kind, place, message) => this.fault(kind, `${part}: ${place}`, message),
      note: (kind, place, message) => this.note(kind, `${part}: ${place}`, message),
    };
  }

  get faults(): number {
    return this.#faults;
  }

  /** Those kept, in the order found. */
  get all(): readonly Finding[] {
    return this.#kept;
  }

  /** How many more of each kind there were than are kept. */
  get untold(): readonly { readonly kind: FindingKind; readonly count: number }[] {
    return [...this.#counts].flatMap(([key, count]) =>
      count > KEPT ? [{ kind: key.split(":")[1] as FindingKind, count: count - KEPT }] : [],
    );
  }

  #add(finding: Finding): void {
    const key = `${finding.severity}:${finding.kind}`;
    const count = (this.#counts.get(key) ?? 0) + 1;
    this.#counts.set(key, count);
    if (count <= KEPT) this.#kept.push(finding);
  }
}

const LONGEST = 300;

/** A text of someone else's without what would move the cursor, turn the writing round or flood the screen. */
export function printable(text: string): string {
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return short.replaceAll(
    /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\ufffd]/gu,
    (found) => `\\u{${(found.codePointAt(0) ?? 0).toString(16)}}`,
  );
}
