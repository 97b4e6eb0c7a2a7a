/** Five years of a spreadsheet as people keep them, made by a seed, with what it says added up while it is written. */

export interface MessySheet {
  readonly text: string;
  /** Minutes of each person, by what was meant when each line was written. */
  readonly minutes: ReadonlyMap<string, number>;
  /** Lines of the file that hold no hours or leave open what they mean, from 1. */
  readonly unreadable: readonly number[];
  /** Lines of the file that hold hours. */
  readonly readable: number;
}

const PEOPLE: readonly (readonly [typed: string, ids: readonly string[]])[] = [
  ["Ines", ["me"]],
  ["ines", ["me"]],
  ["Karl", ["karl"]],
  ["Ines + Karl", ["me", "karl"]],
  ["Karl/Ines", ["karl", "me"]],
  ["wir beide", ["me", "karl"]],
];
const TASKS = ["Leimen", "leimen ", "Schleifen", "Hobeln / Schleifen", "Bruchprobe"];
const PARTS = ["Ruder", "", "Hangar"];
const WRONG: readonly (readonly [span: string, time: string])[] = [
  ["31.2.2022", "2,5"],
  ["irgendwann", "3"],
  ["12.5.2021", ""],
  ["13.5.2021", "viel"],
  ["14.5.2021", "1.30"],
  ["15.5.2021", "0"],
];

export function messySheet(seed: number, lines = 1200): MessySheet {
  const random = randomBy(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const written: string[] = ["Stundenzettel Werkstatt;;;;;", ";;;;;", "Datum;Wer;Arbeit;Stunden;Teil;Wetter"];
  const minutes = new Map<string, number>();
  const unreadable: number[] = [];
  let task = "";
  let readable = 0;
  for (let at = 0; at < lines; at += 1) {
    const kind = random();
    const day = Date.UTC(2017, 0, 1) + Math.floor((at / lines) * 5 * 365) * 86_400_000;
    if (kind < 0.05) written.push(pick(["", ";;;;;", " ; ;;;; "]));
    else if (kind < 0.06) unreadable.push(written.push(`Summe;;;${Math.floor(random() * 300)},5;;`));
    else if (kind < 0.1) {
      const [span, time] = pick(WRONG);
      unreadable.push(written.push(`${span};Ines;Leimen;${time};;`));
      task = "Leimen";
    } else {
      // Cells of one task that were merged are empty but for the first.
      const isMerged = task !== "" && random() < 0.3;
      task = isMerged ? task : pick(TASKS);
      const [who, ids] = pick(PEOPLE);
      const quarters = 1 + Math.floor(random() * 24);
      const [span, time] = [pick(SPANS)(new Date(day)), pick(TIMES)(quarters * 15)];
      written.push(
        [span, who, isMerged ? "" : task, time, pick(PARTS), pick(["", "Regen; kalt"])].map(quoted).join(";"),
      );
      readable += 1;
      for (const id of ids) minutes.set(id, (minutes.get(id) ?? 0) + quarters * 15);
    }
  }
  return { text: `${written.join("\r\n")}\r\n`, minutes, unreadable, readable };
}

const two = (figure: number): string => String(figure).padStart(2, "0");
const SPANS: readonly ((day: Date) => string)[] = [
  (day) => day.toISOString().slice(0, 10),
  (day) => `${day.getUTCDate()}.${day.getUTCMonth() + 1}.${day.getUTCFullYear()}`,
  (day) => `${two(day.getUTCDate())}/${two(day.getUTCMonth() + 1)}/${two(day.getUTCFullYear() % 100)}`,
];
const TIMES: readonly ((minutes: number) => string)[] = [
  (minutes) => String(minutes / 60).replace(".", ","),
  (minutes) => `${String(minutes / 60).replace(".", ",")} h`,
  (minutes) => `${Math.floor(minutes / 60)}:${two(minutes % 60)}`,
  (minutes) => `${minutes} min`,
  (minutes) => `${String(minutes / 60).replace(".", ",")} Std`,
];
const quoted = (cell: string): string => (cell.includes(";") ? `"${cell}"` : cell);

/** A linear congruence (Knuth's MMIX figures would need 64 bits; these are of Numerical Recipes, from memory). */
function randomBy(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
