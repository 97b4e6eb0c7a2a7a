import { type Command, Option } from "commander";
import type { Question } from "../../desk/question.ts";
import { content, day, EXIT_CODES, RECORD } from "../options.ts";
import type { Surroundings } from "../surroundings.ts";
import { addTakeFlags } from "./take-flags.ts";

/** The commands by which a record is written. `typed` is what was said to the program. */
export async function addDesk(
  program: Command,
  typed: readonly string[],
  surroundings: Surroundings,
  exit: (code: number) => void,
): Promise<void> {
  await addQuestions(addBegin(program, surroundings, exit), typed, () => import("../../desk/begin/questions.ts"));
  await addQuestions(addEntry(program, surroundings, exit), typed, () => import("../../desk/entry/questions.ts"));
  addTake(program, surroundings, exit);
  addDue(program, surroundings, exit);
  addFields(program, surroundings, exit);
  addHandOver(program, surroundings, exit);
}

function addHandOver(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("hand-over")
    .summary("let the record go on with its next builder")
    .description(
      "Writes an archive of the record as it is, and a new folder in which it goes on: all that the former builder wrote, word for word, with the next builder among its people. It begins with a seal on what was handed over. Nothing that stands is written over.",
    )
    .argument("<dir>", "the new record’s folder")
    .addOption(content())
    .requiredOption("--to <name>", "the full name of who builds on")
    .option("--public <name>", "the name shown where full names are withheld; without it the first word of --to")
    .option("--id <id>", "the word that stands for that person in the record; without it made of that name")
    .option("--out <dir>", "the folder to put the archive into; without it `archive`, beside a record that was found")
    .addHelpText(
      "after",
      `
Who wrote the record until then is called a former builder. What a writer of the record saw by himself betters no verdict, before or after.

Examples:
  scarfline hand-over ../jonah-record --to "Jonah Example"
  scarfline hand-over ../jonah-record --to "Jonah Example" --content ~/build-record --out /media/stick
${EXIT_CODES}`,
    )
    .action(async (folder, options) =>
      exit(await (await import("./hand-over-command.ts")).handOverCommand(folder, options, surroundings)),
    );
}

function addEntry(program: Command, surroundings: Surroundings, exit: (code: number) => void): Command {
  return program
    .command("entry")
    .summary("begin the entry of a day")
    .description(
      "Writes a new entry and prints it: what you say as facts; free ids, lots in date, the batch before, pieces that may be broken and what the logger has around now as comments. It is kept only if it brings no problem into the record.",
    )
    .argument(...RECORD)
    .addOption(content())
    .addOption(new Option("--on <YYYY-MM-DD>", "the day of the entry; without it today").argParser(day))
    .addHelpText(
      "after",
      `
Every question is also a flag. Where --title is given nothing is asked but what that leaves open.

Examples:
  scarfline entry
  scarfline entry --title "Trailing rib glued" --assembly rudder --joints RD-J02,RD-J03
${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./entry-command.ts")).entryCommand({ ...options, record }, surroundings)),
    );
}

function addTake(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  const command = program
    .command("take")
    .summary("bring in files that were made elsewhere")
    .description(
      "Takes entries from the bench, photographs, files of loggers, spreadsheets of hours as CSV, and folders of all of them. Each file stays as it is, and is kept only if it brings no problem into the record; what it does not say itself is asked once and kept beside it. Nothing is written over, and what was taken before is not taken again.",
    )
    .argument("<file...>", "files, or folders of them")
    .addOption(content());
  addTakeFlags(command);
  command
    .addHelpText(
      "after",
      `
Every question is also a flag. On a terminal what no flag says is asked; elsewhere all that is missing is told.

Examples:
  scarfline take ~/Downloads/2026-03-14-first-glue.md
  scarfline take ~/Downloads/shop.csv --logger "zone: local"
  scarfline take ~/phone-photos
${EXIT_CODES}`,
    )
    .action(async (files, options) =>
      exit(await (await import("./take-command.ts")).takeCommand(files, options, surroundings)),
    );
}

function addDue(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("due")
    .summary("what may be broken today, what expires, what is open")
    .description(
      "Tells which test pieces may be broken, which lots are near their last day, which hold point is next and what it lacks, and what is open. Writes nothing.",
    )
    .argument(...RECORD)
    .addOption(content())
    .addOption(new Option("--on <YYYY-MM-DD>", "the day that is asked about; without it today").argParser(day))
    .addHelpText("after", `\nExamples:\n  scarfline due\n  scarfline due --on 2026-12-01\n${EXIT_CODES}`)
    .action(async (record, options) =>
      exit(await (await import("./due-command.ts")).dueCommand({ ...options, record }, surroundings)),
    );
}

function addFields(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("fields")
    .summary("tell all fields of a kind of file")
    .description(
      "Tells of each field of a kind of file what it is, an example, what it says, whether it must be there, and which edition shows it first.",
    )
    .argument("[kind]", "a kind of file; without it the kinds are listed")
    .option("--markdown", "all kinds as one page in Markdown")
    .addHelpText("after", `\nExamples:\n  scarfline fields\n  scarfline fields adhesive\n${EXIT_CODES}`)
    .action(async (kind, options) =>
      exit(await (await import("./fields-command.ts")).fieldsCommand(kind, options, surroundings)),
    );
}

function addBegin(program: Command, surroundings: Surroundings, exit: (code: number) => void): Command {
  return program
    .command("begin")
    .summary("begin a record of your own")
    .description(
      "Asks for the few things that nobody can guess, and writes a record that has no problem into a folder that is new or empty. What only the adhesive's data sheet can say is left out, with a comment on where it goes.",
    )
    .argument("[folder]", "a folder that is new or empty; without it the one you are in", ".")
    .addHelpText(
      "after",
      `
Every question is also a flag. On a terminal what no flag says is asked; elsewhere all that is missing is told at once.

Examples:
  scarfline begin ~/build-record
  scarfline begin ~/build-record --name Bulrush --type "single-seat open parasol, own drawings" \\
    --builder "Ines Example" --public-name Ines --units metric --time-zone Europe/Lisbon --start 2026-03-07
${EXIT_CODES}`,
    )
    .action(async (folder, options) =>
      exit(await (await import("./begin-command.ts")).beginCommand(folder, options, surroundings)),
    );
}

/** Each question is a flag, in its own words. They know all forms of facts, and are loaded only for who names their command. */
async function addQuestions(
  command: Command,
  typed: readonly string[],
  load: () => Promise<{ readonly QUESTIONS: readonly Question[] }>,
): Promise<void> {
  const { QUESTIONS: questions } = typed.includes(command.name()) ? await load() : { QUESTIONS: [] };
  for (const { flag, asks, optional, with: goesWith, choices } of questions) {
    const whether = optional === true ? "; may be left out" : goesWith === undefined ? "" : `; with ${goesWith}`;
    const among = choices === undefined ? "" : `: ${choices.join(", ")}`;
    command.addOption(new Option(flag, `${asks}${among}${whether}`));
  }
}
