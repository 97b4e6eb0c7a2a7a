/**
 * Whether the glue-up was as the sheet, a procedure and the joints' drawings ask. What is asked and not noted is not
 * shown; what nothing asks is told on the batch's page and decides nothing, but for what tells against a glue line by itself.
 */
import type { Ask, Asks, Procedure, Ref } from "../../facts/types.ts";
import { lookUp } from "../record-index.ts";
import { procedureOf, sheetOf } from "../sources.ts";
import type { Limit, Source } from "../types/source.ts";
import type { Finding } from "../types.ts";
import { judged, type Session } from "./asked.ts";
import { type BatchCase, lotRef } from "./case.ts";

interface Asking {
  readonly asks: Asks;
  readonly from: Source;
  readonly alsoOn: readonly Ref[];
}

export function glueUpRule(c: BatchCase): Finding[] {
  if (c.batch.joints.length === 0) return [];
  const by = procedureBy(c);
  const said = c.batch.glueUp ?? { drop: [], beaded: [] };
  const session: Session = { c, said, method: by?.method ?? {} };
  return [...askings(c, by).flatMap((asking) => asked(session, asking, by)), ...against(session)];
}

const procedureBy = ({ batch, index }: BatchCase): Procedure | undefined =>
  batch.glueUp?.by === undefined ? undefined : index.record.procedures.get(batch.glueUp.by);

/** The sheet first, then the procedure that was followed, then the drawing of each joint. */
function askings({ adhesive, batch, index }: BatchCase, by: Procedure | undefined): Asking[] {
  const joints = batch.joints.map((id) => lookUp(index.joints, id));
  return [
    ...(adhesive.asks ? [{ asks: adhesive.asks, from: sheetOf(adhesive), alsoOn: [] }] : []),
    ...(by?.asks ? [{ asks: by.asks, from: procedureOf(by), alsoOn: [] }] : []),
    ...joints.flatMap(({ id, title, asks }) =>
      asks ? [{ asks, from: drawingOf(title), alsoOn: [{ kind: "joint", id } as const] }] : [],
    ),
  ];
}

const drawingOf = (title: string): Source => ({ code: "source/joint-drawing", values: { title }, known: "record" });

function asked(session: Session, { asks, from, alsoOn }: Asking, by: Procedure | undefined): Finding[] {
  return (Object.keys(asks) as Ask[]).flatMap((ask) => {
    const wanted = asks[ask];
    return wanted === undefined ? [] : judge(session, ask, wanted, from, alsoOn, by);
  });
}

function judge<K extends Ask>(
  session: Session,
  ask: K,
  wanted: NonNullable<Asks[K]>,
  from: Source,
  alsoOn: readonly Ref[],
  by: Procedure | undefined,
): Finding[] {
  const { c, said } = session;
  const words = wordsOf(wanted);
  const limit: Limit = { code: "limit/glue-up", values: { ask, asked: words }, from };
  const answer = judged(ask, wanted, session);
  if (answer === undefined) return [];
  const beside = { limit, alsoOn: [...alsoOn, ...(answer.alsoOn ?? [])] };
  const { found } = answer;
  if (answer.estimate !== undefined)
    return [c.find("glue-up/estimate", "unproven", { ask, asked: words, found: answer.estimate }, beside)];
  if (found === undefined) return [c.find("glue-up/not-noted", "unproven", { ask, asked: words }, beside)];
  const values = { ask, asked: words, found, by: by && isByMethod(ask, said) ? by.title : undefined };
  return [
    answer.isMet
      ? c.find("glue-up/as-asked", "meets", values, beside)
      : c.find("glue-up/not-as-asked", "rejects", values, beside),
  ];
}

const METHODS: readonly Ask[] = ["faces", "endGrain", "staples", "scraped", "secondCup"];

/** Whether it stands by the procedure that the session says it followed, and not by its own words. */
function isByMethod(ask: Ask, said: Session["said"]): boolean {
  if (ask === "fillers" || ask === "fillerMass") return said.filler === undefined;
  return METHODS.includes(ask) && said[ask as keyof Session["said"]] === undefined;
}

function wordsOf(wanted: NonNullable<Asks[Ask]>): string {
  if (typeof wanted === "string") return wanted;
  return "typed" in wanted ? wanted.typed : wanted.join(", ");
}

/** What tells against a glue line whoever asks. */
function against({ c, said }: Session): Finding[] {
  const { drySpots, squeezeOut, beaded, faces, overCured } = said;
  return [
    ...(drySpots === undefined ? [] : [c.find("glue-up/dry-spots", "unproven", { where: drySpots })]),
    ...(squeezeOut === "none" || squeezeOut === "in part"
      ? [c.find("glue-up/little-squeezed", "caution", { squeezeOut })]
      : []),
    ...(beaded.length === 0
      ? []
      : [c.find("glue-up/beaded", "unproven", { lots: beaded }, { alsoOn: beaded.map(lotRef) })]),
    ...(faces === "one" ? [c.find("glue-up/one-face", "caution", {})] : []),
    ...(overCured?.includes("neither") ? [c.find("glue-up/over-cured", "unproven", {})] : []),
  ];
}
