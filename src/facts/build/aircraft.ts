/** The aircraft, its people and what holds for the whole record. */
import type * as z from "zod";
import type { Place } from "../../problem.ts";
import { type Decisions, eachOf, partIf, prose, show } from "../decisions.ts";
import { isFileShown, type Photo, photoOf, photoShown } from "../entry/photo.ts";
import { block, choice, day, language, list, quantity, webAddress, words, worked, zone } from "../field.ts";
import { file } from "../id.ts";
import { factOf, maybe, type SoundFile } from "../typing.ts";
import { type Day, type Passage, type Quantity, type Withheld, WITHHELD_KINDS } from "../values.ts";
import { isPersonShown, type Person, personOf, personSchema, personShown } from "./person.ts";

const picture = block({
  file: file("The picture, relative to this file.", "photos/outside.jpg"),
  alt: words("What is to be seen, for those who cannot see it.", "The fuselage upside down on trestles"),
  caption: words("A line below the picture.", "First time out of the workshop").optional(),
});

export const aircraftSchema = block({
  name: words("The aircraft's name.", "Heron"),
  type: words("Its type, in your own words.", "two-seat low-wing monoplane of spruce and plywood"),
  units: choice(["metric", "imperial"], "The units that pages show beside what was typed."),
  time_zone: zone(),
  start: day("The day the build began.", "2023-03-04"),
  first_flight: day("The day it first flew; the record goes on.", "2028-06-17").optional(),
  target: worked("Hours you mean to work each week.", "9 h").optional(),
  people: list(personSchema, "Everyone who stands in the record."),
  tasks: list(words("A word for a kind of work.", "gluing"), "The words allowed for `task:`."),
  public_shows: list(
    choice(WITHHELD_KINDS, "A kind of fact that the public edition withholds by default."),
    "What the public edition may show although it is withheld by default.",
  ).optional(),
  datum: words("From where arms are measured for weighing.", "Front face of the firewall, level").optional(),
  design_weight: quantity(
    { dimension: "mass", example: "290 kg" },
    "The empty weight that the plans reckon with.",
  ).optional(),
  visit: words("How to visit the workshop.", "On the first Saturday of each month; write first.").optional(),
  photo: picture.meta({ description: "A picture of the aircraft, for the first page." }).optional(),
  language: language().optional(),
  address: webAddress(
    "Where the public edition stands on the web: with it come feeds, a map of the site and pictures for those who share a page.",
  ).optional(),
});

export interface Aircraft {
  readonly place: Place;
  readonly name: string;
  readonly type: string;
  readonly units: "metric" | "imperial";
  readonly timeZone: string;
  readonly start: Day;
  readonly firstFlight?: Day;
  /** Hours the builder means to work each week, in minutes. */
  readonly targetPerWeek?: number;
  readonly people: ReadonlyMap<string, Person>;
  /** The words allowed for `task:`. */
  readonly tasks: readonly string[];
  /** Kinds of fact which the builder lets the public edition show although it is withheld by default. */
  readonly publicShows: readonly Withheld[];
  /** From where arms are measured, in words. */
  readonly datum?: string;
  readonly designWeight?: Quantity;
  /** How to visit the workshop, if the builder says so. */
  readonly visit?: string;
  readonly photo?: Photo;
  /** Of what the builder writes, by its tag; without it English, as the words of pages are. */
  readonly language?: string;
  /** Of the public edition on the web, with a stroke at its end. */
  readonly address?: string;
  readonly body: readonly Passage[];
}

export function aircraftOf(filed: SoundFile<z.output<typeof aircraftSchema>>): Aircraft {
  const { spec, file: own, body } = filed;
  const people = spec.people.map((one, at) => personOf(one, ["people", at], filed));
  return factOf<Aircraft>({
    place: { file: own, line: 1, column: 1 },
    name: spec.name,
    type: spec.type,
    units: spec.units,
    timeZone: spec.time_zone,
    start: spec.start,
    firstFlight: spec.first_flight,
    targetPerWeek: spec.target?.minutes,
    people: new Map(people.map((one) => [one.id, one])),
    tasks: spec.tasks,
    publicShows: spec.public_shows ?? [],
    datum: spec.datum,
    designWeight: maybe(spec.design_weight),
    visit: spec.visit,
    photo: spec.photo && photoOf(spec.photo, ["photo"], filed),
    language: spec.language,
    address: spec.address,
    body,
  });
}

export const aircraftShown: Decisions<Aircraft> = {
  place: show,
  name: show,
  type: show,
  units: show,
  timeZone: show,
  start: show,
  firstFlight: show,
  targetPerWeek: show,
  people: eachOf(personShown, isPersonShown),
  tasks: show,
  publicShows: show,
  datum: show,
  designWeight: show,
  visit: show,
  photo: partIf(photoShown, isFileShown),
  language: show,
  address: show,
  body: prose(""),
};
