/** What is asked of an entry that begins. */
import * as z from "zod";
import { entrySchema } from "../../facts/entry/entry-form.ts";
import type { Answers, Question } from "../question.ts";

export type Key = "title" | "assembly" | "joints" | "adhesive";
export type EntryAnswers = Answers<Key>;

/** What the record has to choose from; nothing is asked of what cannot be read. */
export interface Choices {
  readonly assemblies: readonly string[];
  /** All joints, and those that wait to be glued. */
  readonly joints: readonly string[];
  readonly waiting: readonly string[];
  readonly adhesives: readonly string[];
  /** The adhesive of the last batch. */
  readonly last?: string;
  /** Whether a batch has an adhesive without one being named. */
  readonly usual: boolean;
}

export const idsIn = (typed: string): string[] => typed.split(/[\s,]+/).filter((id) => id !== "");

/** As they are asked of any record; {@link questions} adds what one has to choose from. */
export const QUESTIONS: readonly Question<Key>[] = [
  {
    key: "title",
    flag: "--title <words>",
    asks: "What was done, in a few words",
    form: entrySchema.shape.title,
    example: "Rear spar caps laminated",
  },
  {
    key: "assembly",
    flag: "--assembly <id>",
    asks: "The part that was worked on",
    form: z.string(),
    example: "rudder",
    optional: true,
  },
  {
    key: "joints",
    flag: "--joints <ids>",
    asks: "The joints that one batch of adhesive went into",
    form: z.string(),
    example: "RD-J01, RD-J02",
    optional: true,
  },
  {
    key: "adhesive",
    flag: "--adhesive <id>",
    asks: "The adhesive that was mixed",
    form: z.string(),
    example: "two-part",
    with: "--joints, where none is in use",
  },
];

export function questions(choices: Choices): readonly Question<Key>[] {
  const more = { title: {}, ...moreOf(choices) };
  return QUESTIONS.map((question) => ({ ...question, ...more[question.key] }));
}

function moreOf({ assemblies, joints, waiting, adhesives, last, usual }: Choices) {
  return {
    assembly: {
      example: assemblies[0] ?? "rudder",
      ...(assemblies.length > 0 && { choices: assemblies }),
      asked: () => assemblies.length > 0,
    },
    joints: {
      asks: `The joints that one batch of adhesive went into${waiting.length === 0 ? "" : `; not glued yet: ${waiting.join(", ")}`}`,
      form: z.string().superRefine((typed, context) => {
        const unknown = idsIn(typed).filter((id) => !joints.includes(id));
        if (unknown.length > 0)
          context.addIssue({ code: "custom", message: `there is no joint ${unknown.join(", ")}` });
      }),
      example: waiting.slice(0, 2).join(", ") || "RD-J01, RD-J02",
      asked: ({ assembly }: EntryAnswers) => assembly !== undefined && joints.length > 0,
    },
    adhesive: {
      example: last ?? adhesives[0] ?? "two-part",
      choices: last === undefined ? adhesives : [last, ...adhesives.filter((id) => id !== last)],
      asked: ({ joints: glued }: EntryAnswers) => glued !== undefined && !usual,
    },
  };
}
