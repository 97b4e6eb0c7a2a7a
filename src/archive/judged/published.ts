/** The ledgers in a bag, as they were published. */
import type { Row } from "../../pages/ledgers/column.ts";
import { openBag } from "../source/open.ts";
import { ArchiveRefused } from "../refused.ts";
import type { BagAt } from "../verify/group.ts";
import { LEDGERS_JUDGED } from "./compare.ts";

export interface Published {
  readonly ledgers: ReadonlyMap<string, readonly Row[]>;
  /** The date of the record, and the earliest version of the rules that judged any of it. */
  readonly day: string;
  readonly rules: number;
}

/** Larger than any ledger is. */
const LARGEST = 512 * 1024 * 1024;

const isRow = (value: unknown): value is Row => typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Reads what bags published that were found without faults.
 * @throws ArchiveRefused where there is no ledger with a verdict in them, or one is not as this program writes it
 */
export async function publishedIn(bags: readonly Pick<BagAt, "path">[]): Promise<Published> {
  const ledgers = new Map<string, readonly Row[]>();
  let day: string | undefined;
  let rules = Number.POSITIVE_INFINITY;
  for (const { path } of bags) {
    for (const [name, text] of await textsIn(path)) {
      const told = toldIn(text, name);
      ledgers.set(name, told.rows);
      day ??= told.day;
      rules = Math.min(rules, told.rules);
    }
  }
  if (day === undefined)
    throw new ArchiveRefused("There are no verdicts in it to judge anew: no ledger in data/ledgers/ has any.");
  return { ledgers, day, rules };
}

async function textsIn(path: string): Promise<Map<string, string>> {
  const wanted = new Map(LEDGERS_JUDGED.map((name) => [`data/ledgers/${name}.json`, name]));
  const texts = new Map<string, string>();
  const source = await openBag(path);
  try {
    await source.list({ fault: () => undefined, note: () => undefined });
    await source.visit(
      (member) => wanted.has(member),
      async (member, chunks) => {
        const parts: Uint8Array[] = [];
        let size = 0;
        for await (const chunk of chunks) {
          size += chunk.length;
          if (size > LARGEST) throw new ArchiveRefused(`${member} is larger than any ledger can be.`);
          parts.push(chunk);
        }
        texts.set(wanted.get(member) ?? "", Buffer.concat(parts).toString("utf8"));
      },
    );
  } finally {
    await source.close();
  }
  return texts;
}

function toldIn(text: string, name: string): { readonly day: string; readonly rules: number; readonly rows: Row[] } {
  const refused = new ArchiveRefused(`data/ledgers/${name}.json is not as this program writes a ledger.`);
  let told: unknown;
  try {
    told = JSON.parse(text);
  } catch {
    throw refused;
  }
  const { day, rules = 1, rows } = told as { day?: unknown; rules?: unknown; rows?: unknown };
  if (typeof day !== "string" || typeof rules !== "number" || !Array.isArray(rows) || !rows.every(isRow)) throw refused;
  return { day, rules, rows };
}
