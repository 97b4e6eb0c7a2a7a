/** What is in use from this day on. */
import type { JSX } from "preact";
import { LOT_PARTS } from "../../src/facts/build/adhesive-kind.ts";
import type { InUse as Said, Ref } from "../../src/facts/types.ts";
import { PART_WORDS } from "../../src/pages/evidence/part-words.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { To } from "../shell/link.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

export function InUse({ site, from, entry: { inUse } }: SheetProps): JSX.Element | null {
  if (inUse === undefined) return null;
  const { units } = site.shown.record.aircraft;
  const { scale, pieces, ended } = inUse;
  return (
    <SheetPart title="In use from here on">
      <p class="quiet">
        {ended === true ? "Nothing else that was in use before. " : ""}Batches that say nothing else stand by this.
      </p>
      <dl class="facts">
        {thingsOf(inUse).map(([word, to]) => (
          <>
            <dt>{word}</dt>
            <dd>
              <To site={site} from={from} to={to} />
            </dd>
          </>
        ))}
        {scale === undefined ? null : (
          <>
            <dt>Scale</dt>
            <dd>reads in steps of {quantityWords(scale, units)}</dd>
          </>
        )}
        <Jigs site={site} pieces={pieces} />
      </dl>
    </SheetPart>
  );
}

/** The adhesive and its lots, each with its page. */
function thingsOf({ adhesive, ...lots }: Said): (readonly [string, Ref])[] {
  const parts = LOT_PARTS.flatMap((part): (readonly [string, Ref])[] => {
    const id = lots[part];
    return id === undefined ? [] : [[PART_WORDS[part], { kind: "lot", id }]];
  });
  return adhesive === undefined ? parts : [["Adhesive", { kind: "adhesive", id: adhesive }], ...parts];
}

/** The sizes that stock and jig of a procedure make. */
function Jigs({ site, pieces = [] }: Pick<SheetProps, "site"> & Pick<Said, "pieces">): JSX.Element {
  const { record } = site.shown;
  return (
    <>
      {pieces.map(({ procedure, ...sizes }) => (
        <>
          <dt>Pieces</dt>
          <dd>
            {record.procedures.get(procedure)?.title ?? procedure}:{" "}
            {(["thickness", "width", "overlap"] as const)
              .flatMap((size) => {
                const length = sizes[size];
                return length === undefined ? [] : [`${size} ${quantityWords(length, record.aircraft.units)}`];
              })
              .join(", ")}
          </dd>
        </>
      ))}
    </>
  );
}
