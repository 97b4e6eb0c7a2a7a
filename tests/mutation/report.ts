/** Tells how many mutants lived in each folder, and which. */
import { dirname } from "node:path";
import { type Mutant, read } from "./journal.ts";
import { heldAgainstList, told } from "./survivors.ts";

type Fate = "killed" | "timed out" | "listed" | "lived" | "not reached";

/** Prints a line for each folder and each mutant that lived; true where all that lived are listed. */
export function report(mutants: readonly Mutant[], isSample: boolean): boolean {
  const { fates, stale } = fatesOf(mutants);
  const folders = [...new Set(mutants.map(({ file }) => dirname(file)))].sort();
  for (const folder of folders)
    console.log(
      row(
        folder,
        mutants.filter(({ file }) => dirname(file) === folder),
        fates,
      ),
    );
  console.log(row("all", mutants, fates));
  const open = mutants.filter(({ id }) => fates.get(id) === "lived" || fates.get(id) === "not reached");
  for (const mutant of open)
    console.log(`${told(mutant)}${fates.get(mutant.id) === "not reached" ? " not reached" : ""}`);
  if (!isSample) for (const key of stale) console.log(`on the list and dead or gone: ${key}`);
  return open.length === 0;
}

function fatesOf(mutants: readonly Mutant[]): { fates: Map<string, Fate>; stale: readonly string[] } {
  const notes = read();
  const fates = new Map<string, Fate>(mutants.map(({ id }) => [id, "not reached"]));
  for (const one of notes)
    if (one.note === "covered") for (const id of one.ids) if (fates.has(id)) fates.set(id, "lived");
  for (const one of notes) if (one.note === "killed" || one.note === "timed out") fates.set(one.id, one.note);
  const alive = mutants.filter(({ id }) => fates.get(id) === "lived" || fates.get(id) === "not reached");
  const { known, stale } = heldAgainstList(alive, new Set(mutants.map(({ file }) => file)));
  for (const id of known) fates.set(id, "listed");
  return { fates, stale };
}

function row(title: string, mutants: readonly Mutant[], fates: ReadonlyMap<string, Fate>): string {
  const n = (fate: Fate): number => mutants.filter(({ id }) => fates.get(id) === fate).length;
  const dead = n("killed") + n("timed out");
  const share = `${((100 * dead) / mutants.length).toFixed(1)} %`;
  return `${title}: ${mutants.length} mutants, ${dead} killed (${n("timed out")} by time), ${n("listed")} live that are listed, ${n("lived")} that are not, ${n("not reached")} not reached: ${share}`;
}
