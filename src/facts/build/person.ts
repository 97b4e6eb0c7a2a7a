/** Someone who stands in the record. */
import type * as z from "zod";
import { type Decisions, person, show, where, withheldAs } from "../decisions.ts";
import { audience, block, choice, words } from "../field.ts";
import { ownId } from "../id.ts";
import type { Audience, Path, Placed } from "../values.ts";
import { factOf, type SoundFile } from "../typing.ts";
import type { Visibility } from "../visibility.ts";

export const personSchema = block({
  id: ownId("The word that stands for this person in the record.", "builder"),
  name: words("Full name.", "Ana Example"),
  public: words("The name shown where full names are withheld.", "Ana"),
  role: choice(
    ["builder", "helper", "inspector", "visitor", "former builder"],
    "What this person does here; a former builder wrote the record before it was handed over.",
  ),
  for: audience().optional(),
  authority: words("By whose authority an inspector signs.", "inspector of the owners' association").optional(),
  may_return: words(
    "By what paper this person may return the aircraft to service, own work too.",
    "certificate of the builder, number 12",
  ).optional(),
});

export interface Person extends Placed {
  readonly name: string;
  /** The name shown where full names are withheld. */
  readonly publicName: string;
  readonly role: "builder" | "helper" | "inspector" | "visitor" | "former builder";
  readonly audience: Audience;
  readonly authority?: string;
  /** By what paper this person may return the aircraft to service, own work too. */
  readonly mayReturn?: string;
}

export function personOf(spec: z.output<typeof personSchema>, path: Path, of: SoundFile<unknown>): Person {
  return factOf<Person>({
    id: spec.id,
    place: of.at(path),
    name: spec.name,
    publicName: spec.public,
    role: spec.role,
    audience: spec.for ?? "public",
    authority: spec.authority,
    mayReturn: spec.may_return,
  });
}

/** An authority's number tells who someone is as well as a name does. */
export const personShown: Decisions<Person> = {
  id: person,
  place: show,
  name: withheldAs("names", (name: string, seer: Visibility, { publicName }: Person) =>
    seer.may("names") ? name : publicName,
  ),
  publicName: show,
  role: show,
  audience: show,
  authority: where("names"),
  mayReturn: where("names"),
};

export const isPersonShown = ({ audience: mark }: Person, seer: Visibility): boolean => seer.sees(mark);
