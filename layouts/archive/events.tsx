import type { JSX } from "preact";
import { anchor } from "../../src/pages/address.ts";
import { type DatedEvent, eventsOf } from "../../src/pages/archive/events.ts";
import { PAGES } from "../../src/pages/archive/guide.ts";
import { type RecalledLot, recalledLots } from "../../src/pages/archive/recalled.ts";
import type { Site } from "../../src/editions/shown.ts";
import { dateShort, dateWords } from "../../src/words/dates.ts";
import { Id, None, Section, Title } from "../evidence/parts.tsx";
import { CoatTable } from "../evidence/materials/coats.tsx";
import { FittedTable } from "../evidence/materials/fitted.tsx";
import { Mark } from "../parts/mark.tsx";
import { To } from "../shell/link.tsx";
import { Page } from "../shell/page.tsx";
import { StartPlace } from "./place.tsx";

const PATH = PAGES.events;

export function EventsPage({ site }: { readonly site: Site }): JSX.Element {
  const events = eventsOf(site.shown);
  return (
    <Page
      site={site}
      path={PATH}
      kind="archive"
      title="Index of events"
      description="Recalls, rework, rejections, departures, sign-offs, amendments, the first flight and seals, by date."
    >
      <Title place={<StartPlace from={PATH} />} title="Index of events">
        <p class="title__lead">
          Recalls, rework, rejections, departures, sign-offs, amendments, the first flight and seals, by date.
        </p>
      </Title>
      <Recalls site={site} />
      <Section id="all" title="All of it">
        {events.length === 0 ? <None>Nothing of the kind is noted.</None> : <Events site={site} events={events} />}
      </Section>
    </Page>
  );
}

function Events({ site, events }: { readonly site: Site; readonly events: readonly DatedEvent[] }): JSX.Element {
  return (
    <ol class="history bare">
      {events.map(({ day, kind, says, about }) => (
        <li class="history__day">
          <p class="history__date">
            <time dateTime={day}>{dateShort(day)}</time>
          </p>
          <p class="history__told">
            <span>
              <strong>{kind}.</strong> {says}{" "}
              {about === undefined ? null : <To site={site} from={PATH} to={about} class="id" />}
            </span>
          </p>
        </li>
      ))}
    </ol>
  );
}

/** Each recalled lot, with every joint that held it, parts and coats of it, and how these stand now. */
function Recalls({ site }: { readonly site: Site }): JSX.Element {
  const recalls = recalledLots(site.shown);
  return (
    <Section id="recalls" title="Recalls, and what became of each joint and part">
      {recalls.length === 0 ? <None>No lot was recalled.</None> : null}
      {recalls.map((recalled) => (
        <OfLot site={site} recalled={recalled} />
      ))}
    </Section>
  );
}

function OfLot({ site, recalled }: { readonly site: Site; readonly recalled: RecalledLot }): JSX.Element {
  const { lot, recall, joints, fitted, coats } = recalled;
  const where = { site, from: PATH };
  return (
    <section id={anchor("lot", lot)}>
      <h3>
        Lot <Id {...where} kind="lot" id={lot} />, {dateWords(recall.day)}
      </h3>
      <p class="measure">
        {recall.why}
        {recall.reference === undefined ? "" : ` (${recall.reference})`}
      </p>
      {joints.length + fitted.length + coats.length === 0 ? (
        <None>It went into no joint, was fitted nowhere and put on nowhere.</None>
      ) : null}
      {joints.length === 0 ? null : (
        <ul class="lines bare">
          {joints.map(({ file, became }) => (
            <li>
              <Id {...where} kind="joint" id={file.joint.id} />, {file.joint.title}: <Mark of={file.state} />. {became}
            </li>
          ))}
        </ul>
      )}
      {fitted.length === 0 ? null : (
        <FittedTable {...where} rows={fitted} caption={`Where parts of lot ${lot} were fitted`} />
      )}
      {coats.length === 0 ? null : <CoatTable {...where} rows={coats} caption={`Coats of lot ${lot}`} />}
    </section>
  );
}
