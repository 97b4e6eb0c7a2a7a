import type { JSX } from "preact";
import { relative } from "../../src/pages/address.ts";
import type { AssemblyView } from "../../src/pages/story/assembly.ts";
import type { Site } from "../../src/editions/shown.ts";
import { acceptedWords, drawingWords, offWords } from "../../src/pages/evidence/evidence-lists.ts";
import { dateShort } from "../../src/words/dates.ts";
import { counted, ended } from "../../src/words/lists.ts";
import { quantityWords } from "../../src/words/quantities.ts";
import { Again } from "../evidence/lists/measurements.tsx";
import { To } from "../shell/link.tsx";
import { Mark } from "../parts/mark.tsx";

interface PartProps {
  readonly site: Site;
  readonly from: string;
  readonly view: AssemblyView;
}

/** What is put off, what departs from the drawing, what was measured. */
export function AssemblyMatters(props: PartProps): JSX.Element {
  return (
    <div class="matters">
      <OpenItems {...props} />
      <Departures {...props} />
      <Measurements {...props} />
    </div>
  );
}

function OpenItems({ site, from, view: { file } }: PartProps): JSX.Element | null {
  const open = file.openItems.filter(({ closedIn }) => closedIn === undefined);
  const closed = file.openItems.length - open.length;
  if (file.openItems.length === 0) return null;
  return (
    <section class="section">
      <h2>Open items</h2>
      {open.length === 0 ? <p>All are closed.</p> : null}
      {open.length === 0 ? null : (
        <ul class="bare matter">
          {open.map(({ id, what, before, day }) => (
            <li>
              <To site={site} from={from} to={{ kind: "open item", id }} />{" "}
              <span>
                {what}{" "}
                <span class="quiet">
                  Raised {dateShort(day)}
                  {before === undefined ? "" : `, to be done before ${before}`}.
                </span>
              </span>
            </li>
          ))}
        </ul>
      )}
      {closed > 0 && open.length > 0 ? <p class="small quiet">{closed} closed.</p> : null}
    </section>
  );
}

function Departures({ site, from, view: { file } }: PartProps): JSX.Element | null {
  if (file.departures.length === 0) return null;
  return (
    <section class="section">
      <h2>Departures from the drawing</h2>
      <ul class="bare matter">
        {file.departures.map((departure) => (
          <li>
            <To site={site} from={from} to={{ kind: "departure", id: departure.id }} />{" "}
            <span>
              {departure.what}{" "}
              <span class="quiet">
                {dateShort(departure.day)}; {ended(acceptedWords(site.shown, departure))}
              </span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** So many are told of in full; a list of more is for the page on measurements, which can be sorted. */
const MOST_MEASURED = 6;
const GRAVEST = ["out", "no tolerance", "estimated"] as const;

function gravest(all: AssemblyView["file"]["measurements"]): AssemblyView["file"]["measurements"] {
  const rank = (verdict: string): number =>
    GRAVEST.indexOf(verdict as (typeof GRAVEST)[number]) + 1 || GRAVEST.length + 1;
  const newest = [...all].reverse().sort((a, b) => rank(a.verdict) - rank(b.verdict));
  return newest.slice(0, MOST_MEASURED);
}

const MEASURED_HEAD = (
  <thead>
    <tr>
      <th scope="col">What</th>
      <th scope="col" class="number">
        Drawing
      </th>
      <th scope="col" class="number">
        Tolerance
      </th>
      <th scope="col" class="number">
        Found
      </th>
      <th scope="col" class="number">
        Off
      </th>
      <th scope="col">Held</th>
      <th scope="col">Written</th>
    </tr>
  </thead>
);

function Measurements({
  site,
  from,
  view: {
    file: { measurements: all },
  },
}: PartProps): JSX.Element | null {
  if (all.length === 0) return null;
  const told = gravest(all);
  const rest = all.length - told.length;
  return (
    <section class="section">
      <h2>Measured</h2>
      {rest === 0 ? null : (
        <p class="quiet">
          What is out first, then the newest; {counted(rest, "more measurement")} under{" "}
          <a href={relative(from, "measurements.html")}>measurements</a>.
        </p>
      )}
      <section class="scroll" tabIndex={0} aria-label="Measurements">
        <table class="data">
          {MEASURED_HEAD}
          <tbody>
            {told.map((file) => (
              <Measured file={file} site={site} from={from} />
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}

function Measured({
  file,
  site,
  from,
}: Omit<PartProps, "view"> & { readonly file: AssemblyView["file"]["measurements"][number] }): JSX.Element {
  const { measurement: m, verdict, again } = file;
  const { units } = site.shown.record.aircraft;
  return (
    <tr>
      <th scope="row">{m.what}</th>
      <td class="number">{m.drawing === undefined && m.limits === undefined ? "" : drawingWords(site.shown, m)}</td>
      <td class="number">{m.tolerance?.typed ?? ""}</td>
      <td class="number">{quantityWords(m.found, units)}</td>
      <td class="number">{offWords(site.shown, file)}</td>
      <td>
        <Mark of={verdict} />
        <Again again={again} site={site} from={from} />
        {m.departure === undefined ? null : (
          <>
            {" "}
            <To site={site} from={from} to={{ kind: "departure", id: m.departure }} />
          </>
        )}
      </td>
      <td>
        <To site={site} from={from} to={{ kind: "entry", id: m.entry }}>
          {dateShort(m.entry.slice(0, 10))}
        </To>
      </td>
    </tr>
  );
}
