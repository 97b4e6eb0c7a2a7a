/** What is told of a glue-up, whether anything asks for it or not; and what is asked of one. */
import { WITHHELD } from "../../facts/visibility.ts";
import type { Ask, Asks, Batch, Method, Noted } from "../../facts/types.ts";
import type { Shown } from "../../editions/shown.ts";
import { ASKS } from "../../words/findings/gluing.ts";
import { listed } from "../../words/lists.ts";
import { quantityWords } from "../../words/quantities.ts";

interface Row {
  readonly word: string;
  readonly noted: string;
}

const METHODS: readonly (readonly [keyof Method, string])[] = [
  ["surfaces", "Surfaces"],
  ["cleaned", "Cleaned"],
  ["faces", "Faces wetted"],
  ["endGrain", "End grain wetted"],
  ["filler", "Filler"],
  ["clamps", "Clamps"],
  ["staples", "Staples"],
  ["scraped", "Cup scraped while mixing"],
  ["secondCup", "Mixed again in a second cup"],
];

/** A procedure's method stands only where the session says that it was followed, and says so. */
export function glueUpRows(shown: Shown, { glueUp }: Batch): Row[] {
  if (glueUp === undefined) return [];
  const by = glueUp.by === undefined ? undefined : shown.record.procedures.get(glueUp.by);
  const row = (word: string, noted: string | undefined): Row[] => (noted === undefined ? [] : [{ word, noted }]);
  const size = (quantity: Noted | undefined): string | undefined =>
    quantity && quantityWords(quantity, shown.record.aircraft.units);
  const lots = (ids: readonly string[]): string | undefined => (ids.length === 0 ? undefined : listed(ids));
  const method = METHODS.flatMap(([key, word]) => {
    const asProcedure = by?.method?.[key];
    return row(word, glueUp[key] ?? (asProcedure === undefined ? undefined : `${asProcedure}, as the procedure says`));
  });
  return [
    ...row("Done as", glueUp.by === undefined ? undefined : (by?.title ?? glueUp.by)),
    ...row("Surfaces finished", glueUp.prepared?.typed),
    ...method,
    ...row("Drop of water spread on", lots(glueUp.drop)),
    ...row("Drop of water stood in a bead on", lots(glueUp.beaded)),
    ...row("Cured adhesive bonded again", glueUp.overCured?.join(", ")),
    ...row("Filler weighed", size(glueUp.fillerMass)),
    ...row("Greatest gap when tried dry", size(glueUp.gap)),
    ...row("Warmth of the resin", size(glueUp.resin)),
    ...row("Mixed for", glueUp.mixedFor?.typed),
    ...row("First face spread", glueUp.spread?.typed),
    ...row("Last face spread", glueUp.spreadTo?.typed),
    ...row("Last clamp tight", glueUp.on?.typed),
    ...row("First clamp off", glueUp.off?.typed),
    ...row("Pressure", size(glueUp.pressure)),
    ...row("Squeezed out", glueUp.squeezeOut),
    ...row("Dry spots seen", glueUp.drySpots),
    ...row(
      "Moisture of the parts",
      glueUp.parts
        ?.map(({ lot, moisture }) => `${lot === WITHHELD ? "a lot not shown" : lot} ${moisture.typed}`)
        .join(", "),
    ),
  ];
}

/** What is asked of a glue-up, a row for each thing. */
export function asksRows(asks: Asks | undefined): { readonly word: string; readonly value: string }[] {
  return (Object.keys(ASKS) as Ask[]).flatMap((ask) => {
    const wanted = asks?.[ask];
    if (wanted === undefined) return [];
    const typed = typeof wanted === "string" ? wanted : "typed" in wanted ? wanted.typed : wanted.join(", ");
    const [word, asked] = ASKS[ask];
    return [{ word, value: asked(typed) }];
  });
}

/** How a procedure says that joints are glued. */
export const methodRows = (method: Method | undefined): { readonly word: string; readonly value: string }[] =>
  METHODS.flatMap(([key, word]) => {
    const value = method?.[key];
    return value === undefined ? [] : [{ word, value }];
  });
