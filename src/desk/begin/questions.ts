/** What cannot be guessed of a record that begins. */
import { ADHESIVE_KINDS } from "../../facts/build/adhesive-kind.ts";
import { adhesiveSchema } from "../../facts/build/adhesive.ts";
import { aircraftSchema } from "../../facts/build/aircraft.ts";
import { assemblySchema } from "../../facts/build/assembly.ts";
import { personSchema } from "../../facts/build/person.ts";
import { procedureSchema } from "../../facts/build/procedure.ts";
import type { Day } from "../../facts/types.ts";
import { entrySchema } from "../../facts/entry/entry-form.ts";
import type { Answers, Question } from "../question.ts";

const { name, type, units, time_zone, start } = aircraftSchema.shape;

export type Key =
  | "name"
  | "type"
  | "builder"
  | "publicName"
  | "units"
  | "timeZone"
  | "start"
  | "assembly"
  | "adhesive"
  | "adhesiveKind"
  | "sheet"
  | "pieces"
  | "first";

export type BeginAnswers = Answers<Key>;

/** Forms of test pieces to the names of their procedures. */
export const PIECES = {
  "three-leg": "Three-leg piece",
  "single-lap": "Single lap",
  "block-shear": "Block in shear",
} as const;

/** Where the command runs: what is likely there is offered. */
export interface Here {
  readonly today: Day;
  readonly timeZone: string;
}

const hasAdhesive = ({ adhesive }: BeginAnswers): boolean => adhesive !== undefined;

/** In the order in which they are asked. */
export const questions = (here: Here): readonly Question<Key>[] =>
  QUESTIONS.map((question) => {
    const suggestion = { timeZone: here.timeZone, start: here.today }[question.key as "timeZone" | "start"];
    return suggestion === undefined ? question : { ...question, suggestion };
  });

const AIRCRAFT: readonly Question<Key>[] = [
  { key: "name", flag: "--name <words>", asks: "The aircraft's name", form: name, example: "Bulrush" },
  {
    key: "type",
    flag: "--type <words>",
    asks: "Its type, in your own words",
    form: type,
    example: "single-seat open parasol, own drawings",
  },
  {
    key: "builder",
    flag: "--builder <name>",
    asks: "Your full name, which visitors do not get to see",
    form: personSchema.shape.name,
    example: "Ines Example",
  },
  {
    key: "publicName",
    flag: "--public-name <name>",
    asks: "The name that visitors read for it",
    form: personSchema.shape.public,
    example: "Ines",
  },
  {
    key: "units",
    flag: "--units <units>",
    asks: "The units that pages show beside what you type",
    form: units,
    example: "metric",
    choices: units.options,
  },
  {
    key: "timeZone",
    flag: "--time-zone <zone>",
    asks: "The time zone of the workshop",
    form: time_zone,
    example: "Europe/Lisbon",
  },
  { key: "start", flag: "--start <YYYY-MM-DD>", asks: "The day the build began", form: start, example: "2026-03-07" },
];

const MORE: readonly Question<Key>[] = [
  {
    key: "assembly",
    flag: "--assembly <words>",
    asks: "The first part that you build",
    form: assemblySchema.shape.title,
    example: "Rudder",
    optional: true,
  },
  {
    key: "adhesive",
    flag: "--adhesive <words>",
    asks: "The adhesive, as its label has it",
    form: adhesiveSchema.shape.title,
    example: "Two-part structural epoxy",
    optional: true,
  },
  {
    key: "adhesiveKind",
    flag: "--adhesive-kind <kind>",
    asks: "What the adhesive is made of",
    form: adhesiveSchema.shape.kind,
    example: "two-part",
    choices: ADHESIVE_KINDS,
    asked: hasAdhesive,
    with: "--adhesive",
  },
  {
    key: "sheet",
    flag: "--sheet <words>",
    asks: "Name and revision of its data sheet",
    form: adhesiveSchema.shape.sheet,
    example: "Data sheet of the maker, revision 2",
    asked: hasAdhesive,
    with: "--adhesive",
  },
  {
    key: "pieces",
    flag: "--pieces <form>",
    asks: "The form of the test pieces that you break",
    form: procedureSchema.shape.form,
    example: "three-leg",
    choices: Object.keys(PIECES),
    optional: true,
  },
  {
    key: "first",
    flag: "--first <words>",
    asks: "What was done on the first day, in a few words",
    form: entrySchema.shape.title,
    example: "Bench levelled and drawings pinned up",
    optional: true,
  },
];

/** The same wherever they are asked. */
export const QUESTIONS = [...AIRCRAFT, ...MORE];

/** An answer that goes with one that was not given. */
export function without({ adhesive, adhesiveKind, sheet }: BeginAnswers): string | undefined {
  return adhesive === undefined && (adhesiveKind ?? sheet) !== undefined
    ? "`--adhesive-kind` and `--sheet` tell of an adhesive: say which, --adhesive <words>"
    : undefined;
}
