/** What an inspector takes to the workshop for one hold point, in the order in which it is looked at. */
import type { JSX } from "preact";
import { addressOf, relative } from "../../../src/pages/address.ts";
import { paperOfHoldPoint } from "../../../src/pages/appendix/papers.ts";
import type { HoldPointFile } from "../../../src/evidence/types.ts";
import { holdPointPage, type HoldPointPage } from "../../../src/pages/evidence/hold-point/hold-point-page.ts";
import { HOLD_KIND, HOLD_MEANS, NOT_LOOKED_AT } from "../../../src/pages/evidence/verdict-words.ts";
import { dateWords } from "../../../src/words/dates.ts";
import { counted } from "../../../src/words/lists.ts";
import { runningHeads } from "../../shell/running-heads.ts";
import { Plate } from "../../parts/drawing.tsx";
import { Mark } from "../../parts/mark.tsx";
import { GALLERY_SCRIPTS } from "../../parts/picture.tsx";
import { EDITION_WORDS } from "../../shell/frame.tsx";
import { Page } from "../../shell/page.tsx";
import { SHORT } from "../../shell/seal.tsx";
import { Title, type Where } from "../parts.tsx";
import { InsideJoints, SeenOfJoints, Untrusted } from "./inside-joints.tsx";
import { AskedDepartures, AskedItems, Dimensions, Earlier, Timber } from "./inside-lists.tsx";
import { Closing, Drains, Emptied, Fastened, Fittings, Finish } from "./inside-parts.tsx";
import { Numbered, type PartProps } from "./numbered.tsx";
import { BayPhotographs } from "./photographs.tsx";
import { ByEye } from "./by-eye.tsx";
import { SignOff } from "./sign-off.tsx";

const PARTS: readonly ((props: PartProps) => JSX.Element | null)[] = [
  LookedAt,
  Earlier,
  InsideJoints,
  SeenOfJoints,
  Untrusted,
  AskedDepartures,
  AskedItems,
  Dimensions,
  Timber,
  Fastened,
  Finish,
  Drains,
  Fittings,
  Emptied,
  Closing,
  BayPhotographs,
  Signature,
];

export function HoldPointSheet({ site, file }: Pick<Where, "site"> & { readonly file: HoldPointFile }): JSX.Element {
  const { holdPoint, state, needs } = file;
  const from = addressOf({ kind: "hold point", id: holdPoint.id }) ?? "";
  const page = holdPointPage(site.shown, file);
  const { record, edition, seal } = site.shown;
  return (
    <Page
      site={site}
      path={from}
      kind="hold point"
      title={`Hold point ${holdPoint.id}`}
      description={`${holdPoint.title}: what is to be looked at, what the record has of it, and what is open.`}
      styles={runningHeads(
        record.aircraft.name,
        EDITION_WORDS[edition],
        record.day,
        seal,
        `Hold point ${holdPoint.id}, ${HOLD_KIND[holdPoint.kind]}`,
      )}
      scripts={page.photos.shown.length === 0 ? [] : GALLERY_SCRIPTS}
    >
      <Title
        place={
          <>
            <a href={relative(from, "hold-points.html")}>Hold points</a> / {holdPoint.id}, {HOLD_KIND[holdPoint.kind]}
          </>
        }
        title={holdPoint.title}
      />
      <Paper site={site} from={from} file={file} />
      <div class={`verdict verdict--${state.replaceAll(" ", "-")}`}>
        <p class="verdict__mark">
          <Mark of={state} />
        </p>
        <div class="verdict__body">
          <p>{HOLD_MEANS[state]}</p>
          {needs.length === 0 ? null : (
            <p>
              {openWords(needs.filter(({ blocks }) => blocks).length, needs.filter(({ blocks }) => !blocks).length)},
              under <a href="#joints">joints</a> and <a href="#open">what is open</a>.
            </p>
          )}
        </div>
      </div>
      {PARTS.map((Part, at) => (
        <Part page={page} number={at + 1} site={site} from={from} />
      ))}
    </Page>
  );
}

/** The same with page numbers and running heads, to be taken along and signed. */
function Paper({ site, from, file: { holdPoint } }: Where & { readonly file: HoldPointFile }): JSX.Element | null {
  const paper = site.hasPapers === true ? paperOfHoldPoint(site.shown, holdPoint.id) : undefined;
  return paper === undefined ? null : (
    <p class="screen-only">
      <a href={relative(from, paper.path)}>This hold point to be printed and signed (PDF)</a>
    </p>
  );
}

/** `2 things to be put right, 1 thing still to be done`. */
function openWords(blocking: number, toDo: number): string {
  return [
    ...(blocking === 0 ? [] : [`${counted(blocking, "thing")} to be put right`]),
    ...(toDo === 0 ? [] : [`${counted(toDo, "thing")} still to be done`]),
  ].join(", ");
}

function LookedAt({ page, number, site, from }: PartProps): JSX.Element {
  const { file, inside } = page;
  const { record, edition, seal } = site.shown;
  const asked = new Set(file.joints);
  return (
    <Numbered id="looked-at" number={number} title="What is looked at">
      <dl class="facts">
        <dt>Aircraft</dt>
        <dd>
          {record.aircraft.name}, {record.aircraft.type}
        </dd>
        <dt>Of the assemblies</dt>
        <dd>{inside.map(({ title }) => title).join(", ")}</dd>
        <dt>Joints asked for</dt>
        <dd>{asked.size}</dd>
        <dt>Record of</dt>
        <dd>
          {dateWords(record.day)}, {EDITION_WORDS[edition].toLowerCase()}
          {edition === "archive" ? "" : ": what is meant for narrower editions alone is not on these sheets"}
        </dd>
        <dt>Seal</dt>
        <dd>
          {seal === undefined ? "none" : `${seal.number} of ${dateWords(seal.date)}: ${seal.digest.slice(0, SHORT)}…`}
        </dd>
      </dl>
      <p class="quiet">{NOT_LOOKED_AT}</p>
      <Drawings page={page} site={site} from={from} />
      <ByEye
        looks={[
          { words: "Drawings and their issue, held beside the part", write: true },
          { words: "What closes now, and cannot be seen again", write: true },
          { words: "What stays within reach, and through which opening", write: true },
        ]}
      />
    </Numbered>
  );
}

function Drawings({ page: { file, inside }, site, from }: Where & { readonly page: HoldPointPage }): JSX.Element {
  const asked = new Set(file.joints);
  return (
    <>
      {inside.map((assembly) => {
        const joints = assembly.joints.flatMap(({ id }) =>
          asked.has(id) ? (site.shown.evidence.joints.get(id) ?? []) : [],
        );
        return joints.length === 0 ? null : (
          <div class="sheetplate">
            <h3>{assembly.title}</h3>
            <Plate site={site} from={from} assembly={assembly} joints={joints} />
          </div>
        );
      })}
    </>
  );
}

function Signature({ page, number }: PartProps): JSX.Element {
  return (
    <Numbered id="sign-off" number={number} title="Signature">
      <p class="screen-only quiet">On paper there are lines here to be filled in by hand.</p>
      <SignOff id={page.file.holdPoint.id} />
    </Numbered>
  );
}
