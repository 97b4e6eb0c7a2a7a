import type { JSX } from "preact";
import { byDefault } from "../../src/pages/evidence/by-default.ts";
import { PART_WORDS } from "../../src/pages/evidence/part-words.ts";
import { relative } from "../../src/pages/address.ts";
import type { Site } from "../../src/editions/shown.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { type AdhesivePart, MADE, partsNoted } from "../../src/facts/build/adhesive-kind.ts";
import type { Batch, Component, Ref } from "../../src/facts/types.ts";
import { DayEvents } from "./day-events.tsx";
import { DayStages } from "./day-stages.tsx";
import { InUse } from "./in-use.tsx";
import { DayCoats } from "./day-coats.tsx";
import { DayFitted } from "./day-fitted.tsx";
import { DayCuts, DayRemains } from "./lot-amounts.tsx";
import { Hours } from "./hours.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";
import { Noted } from "../shell/page.tsx";
import { To, ToEach } from "../shell/link.tsx";
import { BatchMark } from "../parts/mark.tsx";

/** What the day's entry notes beside its story. */
export function DaySheet(props: SheetProps): JSX.Element {
  return (
    <div class="sheet">
      <h2>The day’s facts</h2>
      <Hours {...props} />
      <DayCuts {...props} />
      <DayRemains {...props} />
      <InUse {...props} />
      <Batches {...props} />
      <DayStages {...props} />
      <DayFitted {...props} />
      <DayCoats {...props} />
      <DayEvents {...props} />
      <Attachments {...props} />
    </div>
  );
}

function Batches({ site, from, entry }: SheetProps): JSX.Element {
  return (
    <>
      {entry.batches.map((batch) => (
        <BatchPart site={site} from={from} batch={batch} />
      ))}
    </>
  );
}

function amount(component: Component, site: Site): string {
  const quantity = component.mass ?? component.volume;
  return quantity === undefined ? "amount not noted" : quantityWords(quantity, site.shown.record.aircraft.units);
}

function Part({
  site,
  from,
  part,
  component,
  batch,
}: {
  readonly site: Site;
  readonly from: string;
  readonly part: AdhesivePart;
  readonly component: Component;
  readonly batch: Batch;
}): JSX.Element {
  return (
    <>
      <dt>{PART_WORDS[part]}</dt>
      <dd>
        {amount(component, site)}
        {part === "water" ? null : component.lot === undefined ? (
          ", lot not noted"
        ) : (
          <>
            {" "}
            of <To site={site} from={from} to={{ kind: "lot", id: component.lot }} />
            {byDefault(site.shown, batch, `lot of ${part}`)}
          </>
        )}
      </dd>
    </>
  );
}

function Wood({ site, batch }: { readonly site: Site; readonly batch: Batch }): JSX.Element | null {
  const { units } = site.shown.record.aircraft;
  const noted = [
    ...(batch.wood === undefined ? [] : [quantityWords(batch.wood, units)]),
    ...(batch.moisture === undefined ? [] : [`${quantityWords(batch.moisture, units)} moisture`]),
  ];
  if (noted.length === 0) return null;
  return (
    <>
      <dt>Wood</dt>
      <dd>{noted.join(", ")}</dd>
    </>
  );
}

function BatchPart({
  site,
  from,
  batch,
}: {
  readonly site: Site;
  readonly from: string;
  readonly batch: Batch;
}): JSX.Element {
  const { record, evidence } = site.shown;
  const { units } = record.aircraft;
  const shop = [batch.temperature, batch.humidity].flatMap((quantity) =>
    quantity === undefined ? [] : [quantityWords(quantity, units)],
  );
  return (
    <section class="sheet__part">
      <h3 class="sheet__batch">
        <To site={site} from={from} to={{ kind: "batch", id: batch.id }}>
          Batch {batch.id}
        </To>{" "}
        <BatchMark file={evidence.batches.get(batch.id)} />
      </h3>
      <Noted note={batch.note} />
      <dl class="facts">
        <dt>Adhesive</dt>
        <dd>
          <To site={site} from={from} to={{ kind: "adhesive", id: batch.adhesive }}>
            {record.adhesives.get(batch.adhesive)?.title ?? batch.adhesive}
          </To>
          {byDefault(site.shown, batch, "adhesive")}
        </dd>
        {partsNoted<Component>(batch).map(({ part, noted }) => (
          <Part site={site} from={from} part={part} component={noted} batch={batch} />
        ))}
        <Mixed batch={batch} isMixed={MADE[record.adhesives.get(batch.adhesive)?.kind ?? "two-part"].mixed} />
        <Left site={site} batch={batch} />
        {shop.length === 0 ? null : (
          <>
            <dt>Shop</dt>
            <dd>{shop.join(", ")}</dd>
          </>
        )}
        <Wood site={site} batch={batch} />
        <Things site={site} from={from} word="Joints" to={batch.joints.map((id) => ({ kind: "joint", id }))} />
        <Things site={site} from={from} word="Timber" to={batch.timber.map((id) => ({ kind: "lot", id }))} />
        <Things site={site} from={from} word="Pieces" to={batch.pieces.map(({ id }) => ({ kind: "piece", id }))} />
      </dl>
    </section>
  );
}

function Mixed({
  batch: { mixed, closed },
  isMixed,
}: {
  readonly batch: Batch;
  readonly isMixed: boolean;
}): JSX.Element | null {
  return mixed === undefined ? null : (
    <>
      <dt>{isMixed ? "Mixed" : "First spread"}</dt>
      <dd>
        {mixed.typed}
        {closed === undefined ? "" : `, closed ${closed.typed}`}
      </dd>
    </>
  );
}

function Left({ site, batch: { waste, discarded } }: { readonly site: Site; readonly batch: Batch }): JSX.Element {
  return (
    <>
      {waste === undefined ? null : (
        <>
          <dt>Left over</dt>
          <dd>{quantityWords(waste, site.shown.record.aircraft.units)}</dd>
        </>
      )}
      {discarded === undefined ? null : (
        <>
          <dt>Thrown away</dt>
          <dd>{discarded}</dd>
        </>
      )}
    </>
  );
}

interface ThingsProps {
  readonly site: Site;
  readonly from: string;
  readonly word: string;
  readonly to: readonly Ref[];
}

function Things({ site, from, word, to }: ThingsProps): JSX.Element | null {
  return to.length === 0 ? null : (
    <>
      <dt>{word}</dt>
      <dd>
        <ToEach site={site} from={from} to={to} />
      </dd>
    </>
  );
}

function Attachments({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.attachments.length === 0) return null;
  return (
    <SheetPart title="Attached">
      <ul class="bare">
        {entry.attachments.map(({ file, title }) => {
          const path = site.files.get(file);
          return <li>{path === undefined ? title : <a href={relative(from, path)}>{title}</a>}</li>;
        })}
      </ul>
    </SheetPart>
  );
}
