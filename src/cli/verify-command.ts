import { Findings } from "../archive/finding.ts";
import { type KnownElsewhere, verifyRecord } from "../archive/seal/verify-record.ts";
import { type BagsFound, lookAt } from "../archive/source/open.ts";
import { judgeAnew } from "../archive/judged/judged.ts";
import type { BagAt } from "../archive/verify/group.ts";
import { verifyBags } from "../archive/verify/verify.ts";
import { bytesWords } from "../words/numbers.ts";
import { tellJudged } from "./judged-words.ts";
import { localDay } from "../facts/time/local-day.ts";
import { recordFolder } from "./record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { bytesProgress, tellerFor } from "./teller.ts";

interface VerifyOptions extends KnownElsewhere {
  readonly json?: boolean;
  /** Whether the record of a bag is reckoned once more. */
  readonly judgedAnew?: boolean;
}

export async function verifyCommand(
  typed: string | undefined,
  { json = false, judgedAnew = false, ...known }: VerifyOptions,
  surroundings: Surroundings,
): Promise<number> {
  const path = typed ?? recordFolder({}, surroundings);
  const found = await lookAt(path);
  if (found.kind === "nothing")
    throw new WrongUse(`${found.why} Give a record's folder, a bag's folder, a .zip or a .tar.gz.`);
  if (found.kind === "bags" && (known.seal ?? known.signers ?? known.authority) !== undefined)
    throw new WrongUse(
      `Seals are held against a record, and ${path} is a bag. Bring the record back (scarfline restore), or give the data/record of a bag that is unpacked.`,
    );
  if (judgedAnew && found.kind === "record")
    throw new WrongUse(`${path} is a record, which has published nothing: check and build judge it. Give an archive.`);
  const findings = new Findings();
  const tell = tellerFor(
    surroundings,
    found.kind === "record" ? (done, of) => `Checking: ${done} of ${of} files` : bytesProgress("Checking"),
  );
  const progress = json ? () => undefined : tell.progress;
  const { summary, bags } =
    found.kind === "record"
      ? { summary: await recordSummary(path, known, surroundings.now(), findings, progress), bags: [] }
      : await bagSummary(found, findings, progress);
  const isWhole = findings.faults === 0;
  const judged = judgedAnew && isWhole ? await judgeAnew(bags, localDay(surroundings.now())) : undefined;
  if (json)
    surroundings.out(
      `${JSON.stringify({ path, faults: findings.faults, findings: findings.all, untold: findings.untold, judged }, undefined, 2)}\n`,
    );
  else {
    tellAll(findings, summary, tell.line, surroundings);
    if (judged !== undefined) tellJudged(judged, tell.line, surroundings);
    else if (judgedAnew) tell.line("It was not judged anew: only an archive without faults is.");
  }
  return isWhole && (judged === undefined || !("problems" in judged)) ? EXIT.fine : EXIT.problems;
}

async function recordSummary(
  path: string,
  known: KnownElsewhere,
  now: Date,
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<string> {
  const { seals, files } = await verifyRecord(path, known, now, findings, progress);
  const last = seals.at(-1);
  if (last === undefined) return `There is no seal in ${path}, so nothing can be said of it. Set one: scarfline seal`;
  const count = seals.length === 1 ? "the seal" : `all ${seals.length} seals`;
  return findings.faults === 0
    ? `${files} files held against ${count} up to ${last.date}: what was sealed is as it was${known.signers === undefined ? "" : `, and each seal is signed by one of those in ${known.signers}`}.`
    : `${files} files held against ${count} up to ${last.date}: ${faultWords(findings.faults)}.`;
}

async function bagSummary(
  found: BagsFound,
  findings: Findings,
  progress: (done: number, of: number) => void,
): Promise<{ readonly summary: string; readonly bags: readonly BagAt[] }> {
  const { bags, files, bytes } = await verifyBags(found, findings, progress);
  const what = bags.length === 1 ? "The bag" : `${bags.length} bags`;
  const size = `${files} files, ${bytesWords(bytes)} checked`;
  const summary =
    findings.faults === 0
      ? `${what} ${bags.length === 1 ? "is" : "are"} whole: ${size}; nothing is missing, changed or added.`
      : `${what}: ${size}; ${faultWords(findings.faults)}.`;
  return { summary, bags };
}

function faultWords(faults: number): string {
  return faults === 1 ? "1 fault" : `${faults} faults`;
}

/** Faults first, to the error stream; then notes and the sum of it. */
export function tellAll(
  findings: Findings,
  summary: string,
  line: (text: string) => void,
  { err }: Pick<Surroundings, "err">,
): void {
  for (const { place, message } of findings.all.filter(({ severity }) => severity === "fault"))
    err(`${place}: ${message}\n`);
  for (const { place, message } of findings.all.filter(({ severity }) => severity === "note"))
    line(`${place}: ${message}`);
  for (const { kind, count } of findings.untold) line(`and ${count} more like these (${kind})`);
  line(summary);
}
