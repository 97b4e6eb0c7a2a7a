import type { JSX } from "preact";
import { acceptedWords, drawingWords, NOT_GIVEN } from "../../src/pages/evidence/evidence-lists.ts";
import { stagesOpened } from "../../src/pages/evidence/verdict-words.ts";
import { hourWords } from "../../src/words/dates.ts";
import { ended } from "../../src/words/lists.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { DayWeights } from "./day-weights.tsx";
import { PostCures } from "./post-cures.tsx";
import { SheetPart, type SheetProps } from "./sheet-part.tsx";
import { Noted } from "../shell/page.tsx";
import { To, ToEach } from "../shell/link.tsx";
import { Replaced } from "../evidence/replaced.tsx";
import { Mark } from "../parts/mark.tsx";

/** Pieces broken, measurements, departures, open items, recalls, reworks and inspections of a day. */
export function DayEvents(props: SheetProps): JSX.Element {
  return (
    <>
      <Inspections {...props} />
      <Thermometers {...props} />
      <PostCures {...props} />
      <Tests {...props} />
      <Measurements {...props} />
      <DayWeights {...props} />
      <Departures {...props} />
      <OpenItems {...props} />
      <TakenOut {...props} />
    </>
  );
}

function Inspections({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.inspections.length === 0) return null;
  return (
    <SheetPart title="Looked at">
      <ul class="bare sheet__list">
        {entry.inspections.map(({ holdPoint, by, result, remarks, reference }) => (
          <li>
            <To site={site} from={from} to={{ kind: "hold point", id: holdPoint }} /> <Mark of={result} /> by{" "}
            {site.shown.nameOf(by)}
            {reference === undefined ? "" : `, ${reference}`}
            {remarks === undefined ? null : <p class="quiet">{remarks}</p>}
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}

function Thermometers({ site, entry }: SheetProps): JSX.Element | null {
  if (entry.thermometer.length === 0) return null;
  const { units } = site.shown.record.aircraft;
  return (
    <SheetPart title="Thermometer of least and greatest">
      <ul class="bare sheet__list">
        {entry.thermometer.map(({ from, to, least, greatest, note }) => (
          <li>
            {quantityWords(least, units)} to {quantityWords(greatest, units)}{" "}
            <span class="quiet">
              from {hourWords(from.typed)} to {hourWords(to.typed)}
            </span>
            <Noted note={note} />
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}

function Tests({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.tests.length === 0) return null;
  const { units } = site.shown.record.aircraft;
  return (
    <SheetPart title="Test pieces broken">
      <ul class="bare sheet__list">
        {entry.tests.map(({ piece, failure, woodFailure, load, witness, note }) => {
          const noted = [
            woodFailure === undefined ? undefined : `${woodFailure.typed} wood failure`,
            load === undefined ? undefined : `at ${quantityWords(load, units)}`,
            witness === undefined ? undefined : `seen by ${site.shown.nameOf(witness)}`,
          ];
          return (
            <li>
              <To site={site} from={from} to={{ kind: "piece", id: piece }} />{" "}
              <Mark of={site.shown.evidence.pieces.get(piece)?.verdict ?? "inconclusive"} />
              <p class="quiet">
                Broke in the {failure === "mixed" ? "wood and the glue line" : failure}
                {noted
                  .filter((words) => words !== undefined)
                  .map((words) => `, ${words}`)
                  .join("")}
                .{note === undefined ? "" : ` ${note}`}
              </p>
            </li>
          );
        })}
      </ul>
    </SheetPart>
  );
}

function Measurements({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.measurements.length === 0) return null;
  const { units } = site.shown.record.aircraft;
  return (
    <SheetPart title="Measured">
      <ul class="bare sheet__list">
        {entry.measurements.map((one) => {
          const { what, found, joint, tolerance, departure, note } = one;
          const drawing = drawingWords(site.shown, one);
          return (
            <li>
              {what}: {quantityWords(found, units)}
              {joint === undefined ? null : (
                <>
                  {" "}
                  at <To site={site} from={from} to={{ kind: "joint", id: joint }} />
                </>
              )}
              {drawing === NOT_GIVEN ? null : (
                <span class="quiet">
                  {" "}
                  (drawing {drawing}
                  {tolerance === undefined ? "" : ` ${tolerance.typed}`})
                </span>
              )}
              {departure === undefined ? null : (
                <>
                  {" "}
                  <To site={site} from={from} to={{ kind: "departure", id: departure }} />
                </>
              )}
              <Noted note={note} />
            </li>
          );
        })}
      </ul>
    </SheetPart>
  );
}

function Departures({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.departures.length === 0) return null;
  return (
    <SheetPart title="Departs from the drawing">
      <ul class="bare sheet__list">
        {entry.departures.map((departure) => (
          <li>
            <To site={site} from={from} to={{ kind: "departure", id: departure.id }} /> {departure.what}
            <p class="quiet">
              Why: {ended(departure.why)} It is {ended(acceptedWords(site.shown, departure))}
              <Noted note={departure.note} />
            </p>
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}

function OpenItems({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.raised.length + entry.closed.length === 0) return null;
  const items = site.shown.evidence.openItems;
  return (
    <SheetPart title="Open items">
      <ul class="bare sheet__list">
        {entry.raised.map(({ id, what, note }) => (
          <li>
            <To site={site} from={from} to={{ kind: "open item", id }} /> <Mark of="raised" />
            <p class="quiet">
              {what}
              <Noted note={note} />
            </p>
          </li>
        ))}
        {entry.closed.map((id) => (
          <li>
            <To site={site} from={from} to={{ kind: "open item", id }} /> <Mark of="closed" />
            <p class="quiet">{items.get(id)?.what}</p>
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}

function TakenOut({ site, from, entry }: SheetProps): JSX.Element | null {
  if (entry.recalls.length + entry.rejections.length + entry.reworks.length === 0) return null;
  return (
    <SheetPart title="No longer trusted">
      <ul class="bare sheet__list">
        {entry.recalls.map(({ lot, why, reference, note }) => (
          <li>
            <To site={site} from={from} to={{ kind: "lot", id: lot }}>
              Lot {lot}
            </To>{" "}
            <Mark of="recall" word="recalled" />
            <p class="quiet">
              {why}
              {reference === undefined ? "" : ` (${reference})`}
              <Noted note={note} />
            </p>
          </li>
        ))}
        {entry.rejections.map(({ batch, why, note }) => (
          <li>
            <To site={site} from={from} to={{ kind: "batch", id: batch }}>
              Batch {batch}
            </To>{" "}
            <Mark of="rejected" />
            <p class="quiet">
              {why}
              <Noted note={note} />
            </p>
          </li>
        ))}
        {entry.reworks.map(({ joints, stages, why, replaced = [], note }) => (
          <li>
            <ToEach site={site} from={from} to={joints.map((id) => ({ kind: "joint", id }))} />{" "}
            <Mark of="rework" word="glue taken out" />
            {stages === undefined ? "" : stagesOpened(stages)}
            <p class="quiet">
              {ended(why)}
              <Replaced site={site} from={from} replaced={replaced} />
              <Noted note={note} />
            </p>
          </li>
        ))}
      </ul>
    </SheetPart>
  );
}
