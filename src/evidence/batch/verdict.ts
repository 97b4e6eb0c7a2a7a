/** The verdict of a batch: the worst that any finding forces. */
import type { Batch } from "../../facts/types.ts";
import type { RecordIndex } from "../record-index.ts";
import type { BatchFile, BatchVerdict, Finding, PieceFile } from "../types.ts";
import { amendedFindings } from "../amended.ts";
import { byDefaultRule } from "./by-default.ts";
import { batchCase, type BatchCase, type BatchRule } from "./case.ts";
import { cureTemperature } from "./cure-temperature.ts";
import { dewPointRule, shopHumidity, shopTemperature } from "./climate.ts";
import { glueUpRule } from "./glue-up.ts";
import { lotInDate, lotKnown, lotRecalled, lotsOf, timberGrade } from "./lots.ts";
import { mixRatioRule } from "./mix-ratio.ts";
import { postCureRule } from "./post-cure.ts";
import { woodMoisture } from "./moisture.ts";
import { testPieces } from "./pieces.ts";
import { sampleWood } from "./sample.ts";
import { lotStorage, serviceHeat } from "./storage.ts";
import { spreadRule } from "./spread.ts";
import { buildersRejection } from "./rejection.ts";
import { workingLifeRule } from "./working-life.ts";

const amendedRule: BatchRule = ({ index, batch, find }) =>
  amendedFindings(index, { kind: "batch", id: batch.id }, find);

const RULES: readonly BatchRule[] = [
  mixRatioRule,
  lotKnown,
  lotInDate,
  lotRecalled,
  lotStorage,
  timberGrade,
  shopTemperature,
  shopHumidity,
  woodMoisture,
  dewPointRule,
  workingLifeRule,
  spreadRule,
  glueUpRule,
  cureTemperature,
  postCureRule,
  serviceHeat,
  testPieces,
  sampleWood,
  byDefaultRule,
  buildersRejection,
  amendedRule,
];

export function batchFile(index: RecordIndex, batch: Batch, pieces: readonly PieceFile[]): BatchFile {
  const c = batchCase(index, batch, pieces);
  const findings: Finding[] = [];
  for (const rule of RULES) findings.push(...rule(c));
  const { dewPoint, open, life } = c.facts;
  const recalls = lotsOf(c).flatMap((lot) => index.recalls.get(lot) ?? []);
  const rejection = index.rejections.get(batch.id)?.[0];
  return {
    batch,
    verdict: looseVerdict(batch) ?? worstOf(findings),
    findings,
    pieces,
    recalls,
    rejection,
    ratio: ratioOf(c),
    moistureEstimate: c.loggedMoisture ?? c.facts.moistureEstimate,
    dewPoint,
    openFor: open?.openFor,
    workingLife: life?.time,
  };
}

/** Nothing is asked of what is in no joint. A cup that is in one is judged, whatever is said of its end. */
function looseVerdict({ joints, discarded }: Batch): BatchVerdict | undefined {
  if (joints.length > 0) return undefined;
  return discarded === undefined ? "in no joint" : "thrown away";
}

export function worstOf(findings: readonly Finding[]): "shown" | "rejected" | "pending" | "not shown" {
  const has = (severity: Finding["severity"]): boolean => findings.some((finding) => finding.severity === severity);
  if (has("rejects")) return "rejected";
  if (has("unproven")) return "not shown";
  return has("waits") ? "pending" : "shown";
}

function ratioOf({ facts: { ratio } }: BatchCase): BatchFile["ratio"] {
  if (!ratio || ratio.estimates.length > 0) return undefined;
  const { by, parts, found, nominal, error, tolerance, doubt } = ratio;
  return { by, parts, found, nominal, error, tolerance: tolerance?.value, doubt };
}
