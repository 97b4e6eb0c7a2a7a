/** Words planted in a record, and what is known of who may see each. */
import type { Audience, Withheld } from "../../src/record/types.ts";

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
}

const RANK: readonly Audience[] = ["public", "inspector", "archive"];
export const narrowest = (...all: readonly Audience[]): Audience => RANK[Math.max(...all.map((one) => RANK.indexOf(one)))] ?? "archive";
export const isNarrower = (audience: Audience, edition: Audience): boolean => RANK.indexOf(audience) > RANK.indexOf(edition);

const LETTERS = "bdfghjklmnprstvw";

/** Of two sets with different `salt` all words differ but those for everyone (and those said to be the `same`), in length too. */
export class Words {
  readonly all: Word[] = [];
  readonly #salt: string;
  /** Counted apart, so that hidden words more or fewer change none that is for everyone. */
  #same = 0;
  #other = 0;

  constructor(salt = "") {
    this.#salt = salt;
  }

  say(where: string, audience: Audience, more: Partial<Pick<Word, "kind" | "told">> & { readonly same?: boolean } = {}): string {
    const { kind, told = true, same = audience === "public" && kind === undefined && told } = more;
    const text = `zq${same ? `s${lettersOf(this.#same++)}` : `h${lettersOf(this.#other++)}${this.#salt}`}qz`;
    this.all.push({ text, where, audience, told, number: false, ...(kind === undefined ? {} : { kind }) });
    return text;
  }

  /** Digits that stand nowhere else, as `61.7301`. */
  number(where: string, audience: Audience, whole = 61, told = true): string {
    const same = audience === "public";
    const text = `${whole}.${same ? 7 : 8}${String(same ? this.#same++ : 1000 + this.#other++ + this.#salt.length * 3000).padStart(4, "0")}1`;
    this.all.push({ text, where, audience, told, number: true });
    return text;
  }

  /** A number that is given, such as the width of a picture. */
  given(where: string, audience: Audience, text: string): void {
    this.all.push({ text, where, audience, told: false, number: true });
  }
}

function lettersOf(count: number): string {
  return count.toString(16).padStart(4, "0").replace(/./g, (digit) => LETTERS[Number.parseInt(digit, 16)] ?? "b");
}

export function mayShow({ audience, kind }: Word, edition: Audience, publicShows: readonly Withheld[] = []): boolean {
  return !isNarrower(audience, edition) && !(edition === "public" && kind !== undefined && !publicShows.includes(kind));
}
