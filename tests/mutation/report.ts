/** Tells how many mutants lived in each folder, and which. */
import { dirname } from "node:path";
import { type Mutant, read } from "./journal.ts";
import { listed, told } from "./survivors.ts";

type Fate = "killed" | "timed out" | "listed" | "lived" | "not reached";

/** Prints a line for each folder and each mutant that lived; true where all that lived are listed. */
export function report(mutants: readonly Mutant[], sentences: number): boolean {
  const fates = fatesOf(mutants);
  const folders = [...new Set(mutants.map(({ file }) => dirname(file)))].sort();
  for (const folder of folders) console.log(row(folder, mutants.filter(({ file }) => dirname(file) === folder), fates));
  console.log(row("all", mutants, fates));
  console.log(`${sentences} mutants that only empty a sentence were left out.`);
  const open = mutants.filter(({ id }) => fates.get(id) === "lived" || fates.get(id) === "not reached");
  for (const mutant of open) console.log(`${told(mutant)}${fates.get(mutant.id) === "not reached" ? " not reached" : ""}`);
  return open.length === 0;
}

function fatesOf(mutants: readonly Mutant[]): Map<string, Fate> {
  const known = listed();
  const notes = read();
  const fates = new Map<string, Fate>(mutants.map(({ id }) => [id, "not reached"]));
  for (const one of notes) if (one.note === "covered") for (const id of one.ids) if (fates.has(id)) fates.set(id, "lived");
  for (const mutant of mutants) if (known(mutant)) fates.set(mutant.id, "listed");
  for (const one of notes) if (one.note === "killed" || one.note === "timed out") fates.set(one.id, one.note);
  return fates;
}

function row(title: string, mutants: readonly Mutant[], fates: ReadonlyMap<string, Fate>): string {
  const n = (fate: Fate): number => mutants.filter(({ id }) => fates.get(id) === fate).length;
  const dead = n("killed") + n("timed out");
  const share = `${((100 * dead) / mutants.length).toFixed(1)} %`;
  return `${title}: ${mutants.length} mutants, ${dead} killed (${n("timed out")} by time), ${n("lived") + n("listed")} lived (${n("listed")} of them listed), ${n("not reached")} not reached: ${share}`;
}
