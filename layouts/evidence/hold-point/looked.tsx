/** Who looked at a hold point, and what changed since. */
import type { JSX } from "preact";
import { relative } from "../../../src/pages/address.ts";
import type { HoldPointFile, HoldState } from "../../../src/evidence/types.ts";
import { dateWords } from "../../../src/words/dates.ts";
import { toldChange } from "../../../src/words/findings/told.ts";
import type { Inspection } from "../../../src/facts/types.ts";
import { To } from "../../shell/link.tsx";
import { None, Telling, type Where } from "../parts.tsx";

const SIGNED: ReadonlySet<HoldState> = new Set<HoldState>(["passed", "reopened", "signed with things open"]);

interface LooksProps extends Where {
  readonly file: HoldPointFile;
}

/** Each look with what came of it; a signature in a hidden entry is said to be one. */
export function Looks({ file, site, from }: LooksProps): JSX.Element {
  return (
    <>
      {file.inspections.length === 0 ? null : (
        <ul class="lines bare">
          {file.inspections.map((inspection) => (
            <li>
              <Looked inspection={inspection} site={site} from={from} />
            </li>
          ))}
        </ul>
      )}
      {SIGNED.has(file.state) && file.signed === undefined ? (
        <None>It was signed in an entry that this edition does not show.</None>
      ) : null}
    </>
  );
}

function Looked({ inspection, site, from }: Where & { readonly inspection: Inspection }): JSX.Element {
  const scan = inspection.scan === undefined ? undefined : site.files.get(inspection.scan);
  const { authority, mayReturn } = site.shown.record.aircraft.people.get(inspection.by) ?? {};
  return (
    <>
      <To site={site} from={from} to={{ kind: "entry", id: inspection.entry }}>
        {dateWords(inspection.day)}
      </To>
      : <strong>{inspection.result}</strong> by {site.shown.nameOf(inspection.by)}
      {authority === undefined ? "" : `, ${authority}`}
      {mayReturn === undefined ? "" : `, may return it to service by ${mayReturn}`}
      {inspection.reference === undefined ? "" : `, reference ${inspection.reference}`}
      {inspection.remarks === undefined ? "." : `. ${inspection.remarks}`}
      {scan === undefined ? null : (
        <>
          {" "}
          <a href={relative(from, scan)}>Scan of the sign-off for {inspection.holdPoint}</a>
        </>
      )}
    </>
  );
}

/** What changed after a hold point was signed, in the order in which it happened. */
export function Changes({ file, site, from }: LooksProps): JSX.Element | null {
  if (file.changes.length === 0) return null;
  return (
    <div class="holdpoint__needs">
      <p class="label">Changed since it was signed</p>
      <ul class="lines bare">
        {file.changes
          .map((one) => toldChange(site.shown.say, one))
          .map(({ about, sentence }) => (
            <li>
              <Telling site={site} from={from} about={about} sentence={sentence} />
            </li>
          ))}
      </ul>
    </div>
  );
}
