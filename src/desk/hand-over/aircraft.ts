/** `aircraft.md` of a record that goes on with another builder: the same text but for the people who change. */
import { isMap, isScalar, isSeq, parseDocument, type Pair, type YAMLMap, type YAMLSeq } from "yaml";

export interface Builder {
  readonly id: string;
  readonly name: string;
  readonly publicName: string;
}

/** The text cannot be changed in this one place alone; the message says why. */
export class NotRewritten extends Error {}

interface Splice {
  readonly at: number;
  readonly until: number;
  readonly text: string;
}

/** The record’s words for who wrote it, and for who did before. */
const [NOW, BEFORE] = ["builder", "former builder"];

/**
 * Puts the next builder first among the people, and calls the first of those before, who wrote the record, a former one. Everything else
 * stays as it is typed.
 * @param text of a file that was found without problems
 * @throws NotRewritten where the people do not stand as a list of blocks, or one has that id already
 */
export function handedOver(text: string, next: Builder): string {
  const opening = /^\uFEFF?---[ \t]*\r?\n/.exec(text)?.[0] ?? "";
  const length = text.slice(opening.length).search(/^---[ \t]*\r?$/m);
  if (opening === "" || length < 0) throw new NotRewritten("aircraft.md has no facts on top");
  const facts = text.slice(opening.length, opening.length + length);
  const document = parseDocument(facts, { schema: "failsafe", keepSourceTokens: true });
  const people: unknown = document.get("people");
  if (!isSeq(people)) throw new NotRewritten("the people in aircraft.md are no list");
  const each = people.items.map((item) => {
    if (!isMap(item)) throw new NotRewritten("one of the people in aircraft.md is no block");
    return item as YAMLMap;
  });
  if (each.some((item) => item.get("id") === next.id))
    throw new NotRewritten(`${next.id} is the id of someone in the record already; give another: --id`);
  const splices = [
    ...each.flatMap(formerly).slice(0, 1),
    first(facts, people as YAMLSeq, next, text.includes("\r\n") ? "\r\n" : "\n"),
  ];
  return opening + spliced(facts, splices) + text.slice(opening.length + length);
}

/** Where a builder’s role stands, to be called a former one. */
function formerly(item: YAMLMap): Splice[] {
  const role = (item.items as Pair[]).find(({ key }) => isScalar(key) && key.value === "role")?.value;
  if (!isScalar(role) || role.value !== NOW || !role.range) return [];
  return [{ at: role.range[0], until: role.range[1], text: BEFORE ?? "" }];
}

function first(facts: string, people: YAMLSeq, { id, name, publicName }: Builder, end: string): Splice {
  const block = `{ id: ${id}, name: ${JSON.stringify(name)}, public: ${JSON.stringify(publicName)}, role: ${NOW} }`;
  const begins = people.range?.[0] ?? 0;
  if (people.flow === true) return { at: begins + 1, until: begins + 1, text: ` ${block},` };
  const line = facts.lastIndexOf("\n", begins - 1) + 1;
  const indent = facts.slice(line, begins);
  if (!/^[ \t]*$/.test(indent)) throw new NotRewritten("the people in aircraft.md do not begin on a line of their own");
  return { at: begins, until: begins, text: `- ${block}${end}${indent}` };
}

function spliced(text: string, splices: readonly Splice[]): string {
  return [...splices]
    .sort((a, b) => b.at - a.at)
    .reduce((now, { at, until, text: put }) => now.slice(0, at) + put + now.slice(until), text);
}
