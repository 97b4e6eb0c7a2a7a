import type { JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import type { Stage } from "../../src/facts/types.ts";
import { stageWords } from "../../src/pages/evidence/verdict-words.ts";
import { Noted } from "../shell/page.tsx";
import { To, ToEach } from "../shell/link.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

/** Stages of joints that are glued over several sessions. */
export function DayStages({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.stages.length === 0) return null;
  return (
    <SheetPart title="Glued in stages">
      <ul class="bare sheet__list">
        {entry.stages.map((stage) => (
          <li>
            <To site={site} from={from} to={{ kind: "joint", id: stage.joint }} />:{" "}
            <StageLine site={site} from={from} stage={stage} />
            <Noted note={stage.note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}

interface StageLineProps {
  readonly site: Site;
  readonly from: string;
  readonly stage: Stage;
}

/** `stage 2 of 3, glued with B-033, said to be complete`; a batch that the edition does not show is in no word of it. */
export function StageLine({ site, from, stage }: StageLineProps): JSX.Element {
  const { batches, complete } = stage;
  return (
    <>
      {stageWords(stage)}
      {batches.length === 0 ? null : ", glued with "}
      <ToEach site={site} from={from} to={batches.map((id) => ({ kind: "batch", id }))} />
      {complete === true ? ", said to be complete" : ""}
    </>
  );
}
