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

export function questions(choices: Choices): readonly Question<Key>[] {
  const { assemblies, joints, waiting, adhesives, last, usual } = choices;
  return [
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
      example: assemblies[0] ?? "rudder",
      ...(assemblies.length > 0 && { choices: assemblies }),
      optional: true,
      asked: () => assemblies.length > 0,
    },
    {
      key: "joints",
      flag: "--joints <ids>",
      asks: `The joints that one batch of adhesive went into${waiting.length === 0 ? "" : `; not glued yet: ${waiting.join(", ")}`}`,
      form: z.string().superRefine((typed, context) => {
        const unknown = idsIn(typed).filter((id) => !joints.includes(id));
        if (unknown.length > 0)
          context.addIssue({ code: "custom", message: `there is no joint ${unknown.join(", ")}` });
      }),
      example: waiting.slice(0, 2).join(", ") || "RD-J01, RD-J02",
      optional: true,
      asked: ({ assembly }) => assembly !== undefined && joints.length > 0,
    },
    {
      key: "adhesive",
      flag: "--adhesive <id>",
      asks: "The adhesive that was mixed",
      form: z.string(),
      example: last ?? adhesives[0] ?? "two-part",
      choices: last === undefined ? adhesives : [last, ...adhesives.filter((id) => id !== last)],
      asked: ({ joints: glued }) => glued !== undefined && !usual,
    },
  ];
}
