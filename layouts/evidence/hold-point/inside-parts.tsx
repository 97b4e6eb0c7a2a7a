/** Of the hold point's page: what is fastened, put on, drained, fitted, left inside and made ready to close. */
import type { JSX } from "preact";
import { quantityWords } from "../../../src/words/quantities.ts";
import { Mark } from "../../parts/mark.tsx";
import { CoatTable } from "../materials/coats.tsx";
import { FittedTable } from "../materials/fitted.tsx";
import { EntryLink, Id, None } from "../parts.tsx";
import { ByEye } from "./by-eye.tsx";
import { Numbered, type PartProps } from "./numbered.tsx";

export function Fastened({ number }: PartProps): JSX.Element {
  return (
    <Numbered id="blocks" number={number} title="Blocks, and holes at fittings">
      <ByEye
        looks={[
          { words: "Blocks at every bolt and fitting, grain as the drawing asks" },
          { words: "Holes clean, their walls sealed" },
          { words: "Nothing drilled that no drawing or departure shows" },
        ]}
      />
    </Numbered>
  );
}

export function Finish({ page: { coats, inside }, number, ...where }: PartProps): JSX.Element {
  const { finishes } = where.site.shown.record;
  const planned = inside.flatMap((assembly) => assembly.coats.map((coat) => ({ coat, assembly })));
  return (
    <Numbered id="finish" number={number} title="Varnish, its lot, margins left bare">
      {planned.map(({ coat, assembly }) => (
        <p class="quiet">
          Planned on {assembly.title}: {coat.where}, {finishes.get(coat.finish)?.title ?? coat.finish}
          {coat.coats === undefined ? "" : `, ${coat.coats} ${coat.coats === 1 ? "coat" : "coats"}`}.
        </p>
      ))}
      {coats.length === 0 ? (
        <None>No coat is noted by what this edition shows.</None>
      ) : (
        <CoatTable rows={coats} caption="What was put on inside" {...where} />
      )}
      <ByEye
        looks={[
          { words: "Every face and every end of grain inside is sealed" },
          { words: "Faces still to be glued are bare, clean wood" },
        ]}
      />
    </Numbered>
  );
}

export function Drains({ number }: PartProps): JSX.Element {
  return (
    <Numbered id="drains" number={number} title="Drains and vents">
      <ByEye
        looks={[
          { words: "A drain at the lowest point of each bay, open; how many were counted", write: true },
          { words: "Each bay vents to the next or outside; blocks have their corners cut" },
        ]}
      />
    </Numbered>
  );
}

export function Fittings({ page: { fitted }, number, ...where }: PartProps): JSX.Element {
  return (
    <Numbered id="fittings" number={number} title="Fittings, cables, locking">
      {fitted.length === 0 ? (
        <None>No part bought in is noted by what this edition shows.</None>
      ) : (
        <FittedTable rows={fitted} caption="Parts bought in, and where they were fitted" {...where} />
      )}
      <ByEye
        looks={[
          { words: "Fittings, bolts and washers as drawn; bolt heads the right way" },
          { words: "Cables, tubes and wires lie free, with no chafing; pulled through full travel" },
          { words: "Every nut, turnbuckle and pin is locked" },
        ]}
      />
    </Numbered>
  );
}

export function Emptied({ page: { moisture }, number, site, from }: PartProps): JSX.Element {
  return (
    <Numbered id="inside" number={number} title="Nothing left inside; moisture now">
      {moisture === undefined ? (
        <None>No moisture of wood is noted by what this edition shows.</None>
      ) : (
        <p>
          Last noted by a meter when it was glued: {quantityWords(moisture.noted, site.shown.record.aircraft.units)},{" "}
          batch <Id site={site} from={from} kind="batch" id={moisture.batch} />,{" "}
          <EntryLink site={site} from={from} id={moisture.entry} />.
        </p>
      )}
      <ByEye
        looks={[
          { words: "No tools, shavings, tape, staples or nests; counted out" },
          { words: "Moisture of the wood inside now, where and with which meter", write: true },
        ]}
      />
    </Numbered>
  );
}

export function Closing({ page: { toClose }, number, site, from }: PartProps): JSX.Element {
  return (
    <Numbered id="closing" number={number} title="The joint that closes it">
      {toClose.length === 0 ? (
        <None>Every joint inside has been glued.</None>
      ) : (
        <>
          <p>Without glue now; the record does not say which of them closes it:</p>
          <ul class="lines bare">
            {toClose.map(({ joint, state }) => (
              <li>
                <span class="checklist__box checklist__box--inline" aria-hidden="true" />{" "}
                <Id site={site} from={from} kind="joint" id={joint.id} /> {joint.title} <Mark of={state} />
              </li>
            ))}
          </ul>
        </>
      )}
      <ByEye
        looks={[
          { words: "Tried dry: faces meet all along" },
          { words: "Faces fresh, clean and dry; day and hour they were finished", write: true },
          { words: "Adhesive in date and not recalled; lots", write: true },
          { words: "Clamps, blocks and people for the working life of the adhesive" },
        ]}
      />
    </Numbered>
  );
}
