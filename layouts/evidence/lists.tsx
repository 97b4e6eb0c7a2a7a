import type { JSX } from "preact";
import { anchor, relative } from "../../src/pages/address.ts";
import { before, departures, measurements, offWords, openItems } from "../../src/pages/evidence-lists.ts";
import { WITHHELD } from "../../src/pages/veil.ts";
import { quantityWords } from "../../src/pages/words.ts";
import type { Departure, OpenItem } from "../../src/record/types.ts";
import { To } from "../link.tsx";
import { Mark } from "../mark.tsx";
import { Page } from "../page.tsx";
import { EntryLink, Id, ListTable, None, Title, type Where } from "./parts.tsx";

export const LIST_SCRIPTS = ["lists.js"];

type OnlySite = Pick<Where, "site">;

function AssemblyLink({ site, from, id }: Where & { readonly id: string }): JSX.Element {
  return <To site={site} from={from} to={{ kind: "assembly", id }}>{site.shown.record.assemblies.get(id)?.title ?? id}</To>;
}

function ListPlace({ from }: { readonly from: string }): JSX.Element {
  return <a href={relative(from, "evidence.html")}>Evidence</a>;
}

export function OpenItems({ site }: OnlySite): JSX.Element {
  const from = "open-items.html";
  return (
    <Page site={site} path={from} kind="open items" title="Open items" scripts={LIST_SCRIPTS} description="Work put off, and what it must be done before.">
      <Title place={<ListPlace from={from} />} title="Open items"><p class="title__lead">Work put off in one entry and closed in a later one.</p></Title>
      <OpenItemTable items={openItems(site.shown)} site={site} from={from} anchors />
    </Page>
  );
}

export function OpenItemTable({ items, anchors = false, site, from }: Where & { readonly items: readonly OpenItem[]; readonly anchors?: boolean }): JSX.Element {
  if (items.length === 0) return <None>No open items.</None>;
  return (
    <ListTable list={anchors} caption="Open items, those still open first" heads={["Item", "What", "Assembly", "Before", "Raised", "Closed"]}>
      {items.map((item) => (
        <tr id={anchors ? anchor("open item", item.id) : undefined}>
          <th scope="row" class="id">{item.id}</th><td>{item.what}</td><td><AssemblyLink site={site} from={from} id={item.assembly} /></td>
          <td><Before site={site} from={from} item={item} /></td>
          <td data-sort={item.day}><EntryLink site={site} from={from} id={item.entry} /></td>
          <td>{item.closedIn === undefined ? <strong>open</strong> : <EntryLink site={site} from={from} id={item.closedIn} />}</td>
        </tr>
      ))}
    </ListTable>
  );
}

function Before({ item, site, from }: Where & { readonly item: OpenItem }): JSX.Element {
  const what = before(site.shown, item);
  if (what === undefined) return <>not stated</>;
  return "words" in what ? <>{what.words}</> : <Id site={site} from={from} kind="hold point" id={what.holdPoint} />;
}

export function Departures({ site }: OnlySite): JSX.Element {
  const from = "departures.html";
  return (
    <Page site={site} path={from} kind="departures" title="Departures" scripts={LIST_SCRIPTS} description="Work that differs from the drawings, why, and who accepted it.">
      <Title place={<ListPlace from={from} />} title="Departures"><p class="title__lead">Work that differs from the drawing, its reason, and who accepted it.</p></Title>
      <DepartureTable items={departures(site.shown)} site={site} from={from} anchors />
    </Page>
  );
}

export function DepartureTable({ items, anchors = false, site, from }: Where & { readonly items: readonly Departure[]; readonly anchors?: boolean }): JSX.Element {
  if (items.length === 0) return <None>No departures.</None>;
  return (
    <ListTable list={anchors} caption="Departures, those not yet accepted first" heads={["Departure", "What", "Why", "Assembly", "Noted", "Accepted"]}>
      {items.map((item) => (
        <tr id={anchors ? anchor("departure", item.id) : undefined}>
          <th scope="row" class="id">{item.id}</th><td>{item.what}</td><td>{item.why}</td><td><AssemblyLink site={site} from={from} id={item.assembly} /></td>
          <td data-sort={item.day}><EntryLink site={site} from={from} id={item.entry} /></td>
          <td>{item.acceptedBy === undefined ? <strong>not accepted</strong> : <>{site.shown.nameOf(item.acceptedBy)}{item.acceptedIn === undefined || item.acceptedIn === item.entry ? "" : <>, <EntryLink site={site} from={from} id={item.acceptedIn} /></>}</>}</td>
        </tr>
      ))}
    </ListTable>
  );
}

export function Measurements({ site }: OnlySite): JSX.Element {
  const from = "measurements.html";
  return (
    <Page site={site} path={from} kind="evidence" title="Measurements" scripts={LIST_SCRIPTS} description="What was measured, against the drawing and its tolerance.">
      <Title place={<ListPlace from={from} />} title="Measurements"><p class="title__lead">What was measured, against the drawing and its tolerance.</p></Title>
      <MeasurementTable list site={site} from={from} />
    </Page>
  );
}

export function MeasurementTable({ list = false, site, from }: Where & { readonly list?: boolean }): JSX.Element {
  const rows = measurements(site.shown);
  const { units } = site.shown.record.aircraft;
  if (rows.length === 0) return <None>No measurements.</None>;
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  return (
    <ListTable list={list} caption="Measurements, the oldest first" heads={["Day", "What", "Assembly", number("Drawing"), number("Tolerance"), number("Found"), number("Off by"), "Verdict", "Departure"]}>
      {rows.map((row) => {
        const { measurement } = row;
        return (
          <tr>
            <td data-sort={measurement.entry}><EntryLink site={site} from={from} id={measurement.entry} /></td>
            <td>{measurement.what}</td><td><AssemblyLink site={site} from={from} id={measurement.assembly} /></td>
            <td class="number">{measurement.drawing === undefined ? "not given" : quantityWords(measurement.drawing, units)}</td>
            <td class="number">{measurement.tolerance?.typed ?? "none"}</td>
            <td class="number">{quantityWords(measurement.found, units)}</td>
            <td class="number" data-sort={row.off}>{offWords(site.shown, row)}</td>
            <td><Mark of={row.verdict} /></td>
            <td>{measurement.departure === undefined ? "" : measurement.departure === WITHHELD ? "not shown in this edition" : <Id site={site} from={from} kind="departure" id={measurement.departure} />}</td>
          </tr>
        );
      })}
    </ListTable>
  );
}
