/** Of the hold point's page: what was looked at before, departures, open items, measures and timber. */
import type { JSX } from "preact";
import type { HoldPointFile } from "../../../src/evidence/types.ts";
import type { HoldPointPage } from "../../../src/pages/evidence/hold-point/hold-point-page.ts";
import { acceptedWords } from "../../../src/pages/evidence/evidence-lists.ts";
import { dateShort } from "../../../src/words/dates.ts";
import { ended } from "../../../src/words/lists.ts";
import { Mark } from "../../parts/mark.tsx";
import { Noted } from "../../shell/page.tsx";
import { OpenItemTable } from "../lists/lists.tsx";
import { MeasurementTable } from "../lists/measurements.tsx";
import { PairTable } from "../lists/pairs.tsx";
import { EntryLink, Id, ListTable, None, type Where } from "../parts.tsx";
import { ByEye } from "./by-eye.tsx";
import { Changes, Looks } from "./looked.tsx";
import { Needs } from "./needs.tsx";
import { Numbered, type PartProps } from "./numbered.tsx";

export function Earlier({ page: { file, earlier }, number, ...where }: PartProps): JSX.Element {
  const none = earlier.length === 0 && file.inspections.length === 0 && file.signed === undefined;
  return (
    <Numbered id="earlier" number={number} title="Looked at before, and what changed since">
      {none ? (
        <None>No hold point comes before it, and nobody has looked at it by what this edition shows.</None>
      ) : null}
      {earlier.map((other) => (
        <Before file={other} {...where} />
      ))}
      <Looks file={file} {...where} />
      <Changes file={file} {...where} />
      {file.remarks.map((remark) => (
        <p class="quiet">{where.site.shown.say(remark)}</p>
      ))}
    </Numbered>
  );
}

function Before({ file, site, from }: Where & { readonly file: HoldPointFile }): JSX.Element {
  const { holdPoint, state } = file;
  return (
    <div class="earlier">
      <h3>
        <Id site={site} from={from} kind="hold point" id={holdPoint.id} /> {holdPoint.title} <Mark of={state} />
      </h3>
      <Looks file={file} site={site} from={from} />
      <Changes file={file} site={site} from={from} />
    </div>
  );
}

export function AskedDepartures({ page: { departures }, number, ...where }: PartProps): JSX.Element {
  return (
    <Numbered id="departures" number={number} title="Departures, who accepted them, conditions met">
      {departures.length === 0 ? (
        <None>None by what this edition shows.</None>
      ) : (
        <ListTable
          caption="Departures, those not yet accepted first"
          heads={["Departure", "Accepted", "What", "Why", "Noted", "As accepted, seen"]}
        >
          {departures.map((item) => (
            <tr>
              <th scope="row">
                <Id {...where} kind="departure" id={item.id} />
              </th>
              <td class="stock__words">{acceptedWords(where.site.shown, item)}</td>
              <td class="stock__words">
                {item.what}
                <Noted note={item.note} />
              </td>
              <td class="stock__words">{item.why}</td>
              <td>{dateShort(item.day)}</td>
              <td>
                <span class="checklist__box" aria-hidden="true" />
              </td>
            </tr>
          ))}
        </ListTable>
      )}
    </Numbered>
  );
}

export function AskedItems({ page: { openItems, needs }, number, ...where }: PartProps): JSX.Element {
  return (
    <Numbered id="open" number={number} title="Open items, and what else is open">
      {needs.length === 0 ? <None>Nothing but what is told of the joints.</None> : <Needs needs={needs} {...where} />}
      {openItems.length === 0 ? null : <OpenItemTable items={openItems} {...where} />}
    </Numbered>
  );
}

export function Dimensions({ page: { inside, measurements, pairs }, number, ...where }: PartProps): JSX.Element {
  const of = new Set(inside.map(({ id }) => id));
  return (
    <Numbered id="dimensions" number={number} title="Dimensions, twist, left and right">
      {measurements.length === 0 ? (
        <None>No measurements by what this edition shows.</None>
      ) : (
        <MeasurementTable rows={measurements} {...where} />
      )}
      {pairs.length === 0 ? null : <PairTable of={of} {...where} />}
      <ByEye
        looks={[
          { words: "Twist measured now, where and with what", write: true },
          { words: "Left held against right now", write: true },
          { words: "Straight, square, true to the drawing by eye" },
        ]}
      />
    </Numbered>
  );
}

export function Timber({ page: { bonded, scarfs }, number, site, from }: PartProps): JSX.Element {
  return (
    <Numbered id="timber" number={number} title="Timber, scarfs and ply">
      {bonded.timber.length === 0 ? (
        <None>No lot of timber or plywood is named by what this edition shows.</None>
      ) : (
        <ListTable
          caption="Timber and plywood bonded here"
          heads={["Lot", "What", "Species", "Slope of grain", "Moisture when received", "Certificate"]}
        >
          {bonded.timber.map(({ lot }) => (
            <tr>
              <th scope="row">
                <Id site={site} from={from} kind="lot" id={lot.id} />
              </th>
              <td>{lot.title}</td>
              <td>{lot.species ?? "not noted"}</td>
              <td>{lot.grainSlope ?? "not noted"}</td>
              <td>{lot.moisture?.typed ?? "not noted"}</td>
              <td>{lot.certificate === undefined ? "none shown" : "yes"}</td>
            </tr>
          ))}
        </ListTable>
      )}
      <Scarfs scarfs={scarfs} site={site} from={from} />
      <ByEye
        looks={[
          { words: "Scarfs lie where the drawing has them, and slope the right way" },
          { words: "Grain of face plies runs as the drawing asks" },
          { words: "No knot, pitch pocket or compression crack where it can be seen" },
        ]}
      />
    </Numbered>
  );
}

function Scarfs({ scarfs, site, from }: Where & Pick<HoldPointPage, "scarfs">): JSX.Element {
  if (scarfs.length === 0) return <None>No slope of a scarf was noted.</None>;
  return (
    <ul class="lines bare">
      {scarfs.map(({ measurement, verdict }) => (
        <li>
          <Mark of={verdict} /> {measurement.what}: {measurement.found.typed}
          {measurement.joint === undefined ? null : (
            <>
              , joint <Id site={site} from={from} kind="joint" id={measurement.joint} />
            </>
          )}
          {", "}
          <EntryLink site={site} from={from} id={measurement.entry} />
          {measurement.note === undefined ? "" : ` ${ended(measurement.note)}`}
        </li>
      ))}
    </ul>
  );
}
