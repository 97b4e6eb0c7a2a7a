/** What is in use from this day on. */
import type { JSX } from "preact";
import { LOT_PARTS } from "../../src/facts/build/adhesive-kind.ts";
import type { Ref } from "../../src/facts/types.ts";
import { PART_WORDS } from "../../src/pages/evidence/part-words.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { To } from "../shell/link.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";

export function InUse({ site, from, entry: { inUse } }: SheetProps): JSX.Element | null {
  if (inUse === undefined) return null;
  const { record } = site.shown;
  const { units } = record.aircraft;
  const { adhesive, scale, pieces = [], ended } = inUse;
  const things: readonly (readonly [string, Ref | undefined])[] = [
    ["Adhesive", adhesive === undefined ? undefined : { kind: "adhesive", id: adhesive }],
    ...LOT_PARTS.map((part): readonly [string, Ref | undefined] => {
      const lot = inUse[part];
      return [PART_WORDS[part], lot === undefined ? undefined : { kind: "lot", id: lot }];
    }),
  ];
  return (
    <SheetPart title="In use from here on">
      <p class="quiet">
        {ended === true ? "Nothing else that was in use before. " : ""}Batches that say nothing else stand by this.
      </p>
      <dl class="facts">
        {things.flatMap(([word, to]) =>
          to === undefined
            ? []
            : [
                <dt>{word}</dt>,
                <dd>
                  <To site={site} from={from} to={to} />
                </dd>,
              ],
        )}
        {scale === undefined ? null : (
          <>
            <dt>Scale</dt>
            <dd>reads in steps of {quantityWords(scale, units)}</dd>
          </>
        )}
        {pieces.map(({ procedure, ...sizes }) => (
          <>
            <dt>Pieces</dt>
            <dd>
              {record.procedures.get(procedure)?.title ?? procedure}:{" "}
              {(["thickness", "width", "overlap"] as const)
                .flatMap((size) => {
                  const length = sizes[size];
                  return length === undefined ? [] : [`${size} ${quantityWords(length, units)}`];
                })
                .join(", ")}
            </dd>
          </>
        ))}
      </dl>
    </SheetPart>
  );
}
