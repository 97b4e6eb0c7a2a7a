import { readFileSync } from "node:fs";
import { Command, InvalidArgumentError, Option } from "commander";
import { addArchive } from "./archive-program.ts";
import { addDesk } from "./desk/desk-program.ts";
import { AUDIENCES } from "../facts/values.ts";
import { content, date, EXIT_CODES, notPlain, plain, RECORD } from "./options.ts";
import type { Surroundings } from "./surroundings.ts";

/** The commands, with their help. `exit` is given the exit code of a command that ran to its end. */
export async function programFor(
  typed: readonly string[],
  surroundings: Surroundings,
  exit: (code: number) => void,
): Promise<Command> {
  const program = new Command("scarfline");
  program
    .description(
      "Reads a home builder's record of an aircraft, reckons what it proves of every glued joint, and writes a site.",
    )
    .version(versionOf(surroundings))
    .helpCommand("help [command]", "show the help of a command")
    .exitOverride()
    .configureOutput({ writeOut: surroundings.out, writeErr: surroundings.err })
    .showHelpAfterError("For help: scarfline --help")
    .addHelpText(
      "after",
      `\nExamples:\n  scarfline begin ~/build-record\n  scarfline check\n  scarfline entry\n  scarfline due\n  scarfline build\n  scarfline preview\n  scarfline seal\n  scarfline bag --out ~/archive\n${EXIT_CODES}`,
    );
  await addDesk(program, typed, surroundings, exit);
  addBuild(program, surroundings, exit);
  addCheck(program, surroundings, exit);
  addExplain(program, surroundings, exit);
  addPreview(program, surroundings, exit);
  addSchemas(program, surroundings, exit);
  addArchive(program, surroundings, exit);
  return program;
}

function addBuild(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("build")
    .summary("write the site")
    .description(
      "Writes the site. With any problem in the record nothing is written, and an earlier site stays as it was.",
    )
    .argument(...RECORD)
    .addOption(content())
    .option(
      "--out <dir>",
      "where to write; what an earlier build wrote there is replaced, anything else is left alone; without it `site`, beside a record that was found",
    )
    .addOption(
      new Option("--edition <edition>", "whom it is for; `all` writes each into a folder of its own within --out")
        .choices([...AUDIENCES, "all", "bench"])
        .default("public"),
    )
    .addOption(date())
    .addOption(plain())
    .addOption(notPlain())
    .option("--fresh", "build all anew, though nothing that the site is made from has changed")
    .option("--paper", "make PDFs too, in all but the public edition; for what it needs: explain no-typesetter")
    .option(
      "--prune",
      "afterwards clear the cache of pictures that this record does not name, those of other records included",
    )
    .addHelpText(
      "after",
      `
Editions:
  public     for everyone: what is marked for the inspector or the archive is not in it
  inspector  adds what is marked for the inspector, full names, certificates, attachments and ledgers
  archive    everything
  all        DIR/public, DIR/inspector and DIR/archive; put only DIR/public on a public host
  bench      no site but the page for your own phone beside the scale, in bench unless --out says where

Examples:
  scarfline build
  scarfline build --edition inspector --paper --out ../for-the-inspector
  scarfline build ~/build-record --edition all --out ~/sites
  scarfline build --date 2025-06-30
${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./build-command.ts")).buildCommand({ ...options, record }, surroundings)),
    );
}

function addCheck(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("check")
    .summary("look for problems in the record")
    .description(
      "Tells every problem in the record with its file, line and column, and how to mend it. Writes nothing.",
    )
    .argument(...RECORD)
    .addOption(content())
    .option("--json", "print the problems as JSON, for editors and scripts")
    .addOption(date())
    .addOption(plain())
    .addOption(notPlain())
    .addHelpText(
      "after",
      `\nExamples:\n  scarfline check\n  scarfline check ~/build-record\n  scarfline check --json > problems.json\n${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./check-command.ts")).checkCommand({ ...options, record }, surroundings)),
    );
}

function addExplain(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("explain")
    .summary("tell more of a problem, by its code")
    .description(
      "Tells of a kind of problem what happened, why it matters and what to do, with an example. The code stands in brackets after each problem; without one all are listed.",
    )
    .argument("[code]", "the code of a problem, such as no-unit")
    .addHelpText("after", `\nExamples:\n  scarfline explain no-unit\n  scarfline explain\n${EXIT_CODES}`)
    .action(async (code: string | undefined) =>
      exit(await (await import("./explain-command.ts")).explainCommand(code, surroundings)),
    );
}

function addPreview(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("preview")
    .summary("see the site while you write")
    .description(
      "Serves the site to a browser on this machine and renews it whenever the record changes. Problems are shown in the page and here; the last good site stays in view. Stop it with Ctrl+C.",
    )
    .argument(...RECORD)
    .addOption(content())
    .option("--port <number>", "the port to serve at; the next free one is taken if it is in use", port, 8080)
    .addOption(new Option("--edition <edition>", "whom it is for").choices(AUDIENCES).default("public"))
    .addOption(plain())
    .addOption(notPlain())
    .option(
      "--editor <link>",
      "what a problem's place links to, such as vscode://file{path}:{line}; nothing without it",
    )
    .addHelpText(
      "after",
      `\nExamples:\n  scarfline preview\n  scarfline preview --edition inspector --port 4000\n${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./preview-command.ts")).previewCommand({ ...options, record }, surroundings)),
    );
}

function addSchemas(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("schemas")
    .summary("write JSON Schemas for an editor")
    .description("Writes a JSON Schema for each kind of file, so that an editor can complete keys and mark mistakes.")
    .option("--out <dir>", "where to write; without it `schemas` in the record")
    .addHelpText(
      "after",
      `\nExamples:\n  scarfline schemas\n  scarfline schemas --out ~/build-record/schemas\n${EXIT_CODES}`,
    )
    .action(async (options) =>
      exit(await (await import("./schemas-command.ts")).schemasCommand(options, surroundings)),
    );
}

function versionOf({ program }: Surroundings): string {
  return (JSON.parse(readFileSync(new URL("package.json", program), "utf8")) as { version: string }).version;
}

function port(text: string): number {
  const number = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(number <= 65535)) throw new InvalidArgumentError("A port is a number up to 65535; 0 takes any that is free.");
  return number;
}
