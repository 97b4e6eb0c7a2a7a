/** What an amendment changes, in words that an edition can look through. */
import type { Place } from "../../problem.ts";
import { entrySchema } from "../../facts/entry/entry-form.ts";
import { formAt } from "../schema/form.ts";
import type { Data } from "../text/yaml.ts";
import type { Audience, Change, Ref, Said } from "../../facts/types.ts";
import type { AlteredFact } from "./alter.ts";
import type { Altered } from "./merge.ts";
import { saidOf, wordsOf } from "./said.ts";
import { textIn, type Tree } from "./tree.ts";

const NARROW: readonly Audience[] = ["archive", "inspector"];

/** `entry` is the one that is amended. */
export function changesOf(facts: readonly AlteredFact[], entry: string, placeOf: (at: Tree) => Place): Change[] {
  return facts.flatMap((fact) =>
    fact.altered.map((altered): Change => {
      const subject: Ref | undefined =
        fact.list?.kind === undefined || fact.key === undefined ? undefined : { kind: fact.list.kind, id: fact.key };
      const value = wordsOf(...altered.path);
      return {
        place: placeOf(altered.at),
        about: aboutOf(fact, subject, entry),
        fact: fact.key === undefined ? fact.word : `${fact.word} ${fact.key}`,
        ...(fact.list && altered.path.length > 0 && { value }),
        ...told("was", fact, altered),
        ...told("is", fact, altered),
        needs: [...(subject ? [subject] : []), ...trialsOf(fact)],
        audience: audienceOf(fact),
        ...(altered.fixed && { fixed: true }),
        ...(altered.worsens && { worsens: true }),
      };
    }),
  );
}

function aboutOf({ list }: AlteredFact, subject: Ref | undefined, entry: string): Ref {
  const has = subject?.kind === "batch" || subject?.kind === "piece" || list?.named === true;
  return has && subject ? subject : { kind: "entry", id: entry };
}

function told(key: "was" | "is", fact: AlteredFact, { path, ...altered }: Altered): { was?: Said; is?: Said } {
  const data = altered[key];
  const form = formAt(entrySchema, [...fact.path, ...path]);
  return data === undefined ? {} : { [key]: saidOf(form, path.length === 0 ? bare(data) : data) };
}

/** A whole fact without the ids that are told before it. */
function bare(data: Data): Data {
  if (typeof data === "string" || Array.isArray(data)) return data;
  return Object.fromEntries(Object.entries(data).filter(([key]) => !["id", "piece", "for"].includes(key)));
}

/** What a piece's preparation is called tells of its trial. */
function trialsOf({ list, before, after }: AlteredFact): Ref[] {
  if (list?.path.at(-1) !== "pieces") return [];
  const ids = [textIn(before, "trial"), after && textIn(after, "trial")].filter((id) => id !== undefined);
  return [...new Set(ids)].map((id): Ref => ({ kind: "trial", id }));
}

function audienceOf({ before, after }: AlteredFact): Audience {
  const typed = [textIn(before, "for"), after && textIn(after, "for")];
  return NARROW.find((audience) => typed.includes(audience)) ?? "public";
}
