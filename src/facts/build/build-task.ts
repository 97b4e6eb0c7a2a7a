/** A task of building, with who did how much of it. */
import type * as z from "zod";
import { type Decisions, show } from "../decisions.ts";
import { block, choice, tenths, words } from "../field.ts";
import { ownId } from "../id.ts";
import { factOf, type SoundFile } from "../typing.ts";
import type { Path, Placed } from "../values.ts";

const part = (who: string) => tenths(`The part of it done ${who}, in tenths; without it none.`, "0.3").optional();

export const buildTaskSchema = block({
  id: ownId("The task's id, or its number in the authority's list.", "W-3"),
  title: words("What the task is.", "Fabricate the wing ribs"),
  applicable: choice(["yes", "no"], "Whether this aircraft has such a thing at all; without it yes.").optional(),
  credit: block({
    maker: part("by the maker of the kit"),
    paid: part("by paid help"),
    assembly: part("by amateurs, putting together"),
    fabrication: part("by amateurs, making parts"),
  })
    .meta({ description: "Who did how much of it, in tenths." })
    .optional(),
});

/** A task of building, one point. A task without credit does not apply to this aircraft. */
export interface BuildTask extends Placed {
  readonly title: string;
  readonly assembly: string;
  /** Who did how many tenths; they add up to ten. */
  readonly credit?: {
    readonly maker: number;
    readonly paid: number;
    readonly assembly: number;
    readonly fabrication: number;
  };
}

export function buildTaskOf(spec: z.output<typeof buildTaskSchema>, path: Path, of: SoundFile<unknown>): BuildTask {
  return factOf<BuildTask>({
    id: spec.id,
    place: of.at(path),
    title: spec.title,
    assembly: of.id,
    credit: spec.applicable === "no" ? undefined : creditOf(spec.credit),
  });
}

type Credit = NonNullable<z.output<typeof buildTaskSchema>["credit"]>;

function creditOf(credit: Credit | undefined): BuildTask["credit"] {
  const tenths = (part: Credit["maker"]): number => part?.tenths ?? 0;
  return (
    credit && {
      maker: tenths(credit.maker),
      paid: tenths(credit.paid),
      assembly: tenths(credit.assembly),
      fabrication: tenths(credit.fabrication),
    }
  );
}

export const buildTaskShown: Decisions<BuildTask> = {
  id: show,
  place: show,
  title: show,
  assembly: show,
  credit: show,
};
