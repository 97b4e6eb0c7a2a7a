/** Words planted in a record, and what is known of who may see each. */
import type { Audience, Withheld } from "../../src/facts/types.ts";

export interface Word {
  readonly text: string;
  /** The place it is planted in, for the one who reads a failing test. */
  readonly where: string;
  readonly audience: Audience;
  /** The kind of fact that public withholds by default, if it is one. */
  readonly kind?: Withheld;
  /** Whether an edition that may show it does so as text: what files were called, and what pictures hold beside the picture, no edition tells. */
  readonly told: boolean;
  /** A number: looked for by itself, not within other digits. */
  readonly number: boolean;
  readonly typed: boolean;
  /** Whether an edition that may show it need not: public names where it has the full ones. */
  readonly optional?: boolean;
}

const RANK: readonly Audience[] = ["public", "inspector", "archive"];
export const narrowest = (...all: readonly Audience[]): Audience =>
  RANK[Math.max(...all.map((one) => RANK.indexOf(one)))] ?? "archive";
const isNarrower = (audience: Audience, edition: Audience): boolean => RANK.indexOf(audience) > RANK.indexOf(edition);

const LETTERS = "bdfghjklmnprstvw";

/** Of two sets with different `salt` all words differ that `edition` does not show (but those said to be the `same`), in length too. */
export class Words {
  readonly all: Word[] = [];
  readonly #salt: string;
  readonly #publicShows: readonly Withheld[];
  readonly #edition: Audience;
  /** Counted apart, so that hidden words more or fewer change none that is for everyone. */
  #same = 0;
  #other = 0;

  constructor(salt = "", publicShows: readonly Withheld[] = [], edition: Audience = "public") {
    this.#salt = salt;
    this.#publicShows = publicShows;
    this.#edition = edition;
  }

  say(
    where: string,
    audience: Audience,
    more: Partial<Pick<Word, "kind" | "told" | "optional">> & { readonly same?: boolean } = {},
  ): string {
    const { kind, told = true, optional = false, same = told && this.isShown(audience, kind) } = more;
    const text = `zq${same ? `s${lettersOf(this.#same++)}` : `h${lettersOf(this.#other++)}${this.#salt}`}qz`;
    this.all.push({
      text,
      where,
      audience,
      told,
      number: false,
      typed: true,
      optional,
      ...(kind === undefined ? {} : { kind }),
    });
    return text;
  }

  /** Whether the edition shows what is marked so; then it stays the same, files that are published whole among it. */
  isShown(audience: Audience, kind?: Withheld): boolean {
    return mayShow(kind === undefined ? { audience } : { audience, kind }, this.#edition, this.#publicShows);
  }

  /** A sum of money of digits that stand nowhere else, as `70012.31`. */
  money(where: string, audience: Audience): string {
    const same = this.isShown(audience, "costs");
    const text = `${same ? `7${String(this.#same++).padStart(4, "0")}` : `8${String(this.#other++ + this.#salt.length * 3000).padStart(4, "0")}`}.31`;
    this.all.push({ text, where, audience, told: true, number: true, typed: true, kind: "costs" });
    return `${text} EUR`;
  }

  /** Digits that stand nowhere else, as `61.7301`. */
  number(where: string, audience: Audience, whole = 61, told = true): string {
    const same = this.isShown(audience);
    const text = `${whole}.${same ? 7 : 8}${String(same ? this.#same++ : 1000 + this.#other++ + this.#salt.length * 3000).padStart(4, "0")}1`;
    this.all.push({ text, where, audience, told, number: true, typed: true });
    return text;
  }

  /** A number that nobody types, the width of a picture; once for each audience. */
  width(where: string, audience: Audience): number {
    const text = audience === "archive" ? "1913" : "1931";
    if (audience !== "public" && !this.all.some((word) => word.text === text))
      this.all.push({ text, where, audience, told: true, number: true, typed: false });
    return audience === "public" ? 96 : Number(text);
  }
}

function lettersOf(count: number): string {
  return count
    .toString(16)
    .padStart(4, "0")
    .replace(/./g, (digit) => LETTERS[Number.parseInt(digit, 16)] ?? "b");
}

export function mayShow(
  { audience, kind }: Pick<Word, "audience" | "kind">,
  edition: Audience,
  publicShows: readonly Withheld[] = [],
): boolean {
  const byDefault = kind === undefined ? "public" : kind === "costs" ? "archive" : "inspector";
  const withheld = kind !== undefined && !publicShows.includes(kind) && isNarrower(byDefault, edition);
  return !isNarrower(audience, edition) && !withheld;
}
