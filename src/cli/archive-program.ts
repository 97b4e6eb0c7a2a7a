import { type Command, InvalidArgumentError, Option } from "commander";
import { sizeOf } from "../archive/bag/parts.ts";
import { content, date, day, EXIT_CODES, notPlain, plain, RECORD } from "./options.ts";
import type { Surroundings } from "./surroundings.ts";

/** The commands that keep a record for later, and hold it against what it was. */
export function addArchive(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  addSeal(program, surroundings, exit);
  addVerify(program, surroundings, exit);
  addBag(program, surroundings, exit);
  addRestore(program, surroundings, exit);
}

function addSeal(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("seal")
    .summary("set a seal on the record as it is")
    .description(
      "Writes down the digest of every file of the record, and adds one line to seals.txt in its folder. Later changes show against it. With any problem in the record nothing is sealed.",
    )
    .argument(...RECORD)
    .addOption(content())
    .addOption(new Option("--date <YYYY-MM-DD>", "the day of the seal; without it today").argParser(day))
    .option("--sign <file>", "sign with this SSH key; needs OpenSSH's ssh-keygen")
    .option("--stamp", "write a query for a time stamp (RFC 3161) of the last seal; needs OpenSSL. Nothing is sent")
    .option("--reply <file>", "set no seal, but check the authority's reply to that query, and keep it")
    .option(
      "--authority <file>",
      "with --reply: hold it against these certificates of the authority (PEM), and keep them",
    )
    .addHelpText(
      "after",
      `
A line of seals.txt holds: the date, the SHA-256 of a list of files, the SHA-256 of all lines before it, the
number of files, the name of the list, and the versions of this form and of the rules. In the record's folder anyone can check it without this program:
  sha256sum seals/2026-11-20.sha256        prints the second word of the line
  sha256sum -c seals/2026-11-20.sha256     checks every file
  head -n 2 seals.txt | sha256sum          prints the third word of line 3

Examples:
  scarfline seal
  scarfline seal ~/build-record --sign ~/.ssh/id_ed25519
  scarfline seal --stamp
  scarfline seal --reply reply.tsr --authority authority.pem
${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./seal-command.ts")).sealCommand({ ...options, record }, surroundings)),
    );
}

function addVerify(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("verify")
    .summary("find out whether a record or a bag is as it was")
    .description(
      "Holds a record against its seals, or a bag (RFC 8493; anyone's: a folder, a .zip, a .tar.gz, or a folder that holds the parts of one) against its manifests. Tells what is missing, changed, added or unsafe. Changes nothing, fetches nothing, and reads nothing outside.",
    )
    .argument("[path]", "the record's folder, or the bag; without it the record you are in, or the nearest above")
    .option(
      "--signers <file>",
      "check signatures of seals against this file of allowed signers; its form is in `man ssh-keygen`",
    )
    .addOption(
      new Option(
        "--seal <digest>",
        "a seal's digest from elsewhere, such as a page or a print: whether that seal is still in the list",
      ).argParser(digest),
    )
    .option("--authority <file>", "check time stamps of seals against these certificates of an authority (PEM)")
    .option(
      "--judged-anew",
      "of an archive that is whole: reckon its record once more by the rules of this program, and tell each verdict that differs from the published one",
    )
    .option("--json", "print what is found as JSON")
    .addHelpText(
      "after",
      `
The list of seals shows by itself when a line in it was altered, put in or taken out, but not when it was cut off at its
end or written anew with all its manifests. A digest that is known from elsewhere shows that too: the appendix and the
page "About this record" of every edition name that of the last seal. Its first 16 digits are enough.

Examples:\n  scarfline verify\n  scarfline verify ~/build-record --signers signers.txt\n  scarfline verify ~/build-record --seal 9f86d081884c7d65\n  scarfline verify archive/heron-2026-11-20.zip\n  scarfline verify archive/heron-2026-11-20.zip --judged-anew\n  scarfline verify --json /media/stick/bag\n${EXIT_CODES}`,
    )
    .action(async (path, options) =>
      exit(await (await import("./verify-command.ts")).verifyCommand(path, options, surroundings)),
    );
}

function addBag(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("bag")
    .summary("write the whole record for the archive")
    .description(
      "Writes a bag (RFC 8493, BagIt 1.0): the record with all photographs and papers, the ledgers, the archive edition as a site, the rules, the seals, and manifests that common tools check. Written whole or not at all; a bag that stands is never written over.",
    )
    .argument(...RECORD)
    .addOption(content())
    .option("--out <dir>", "the folder to put the bag into; without it `archive`, beside a record that was found")
    .addOption(plain())
    .addOption(notPlain())
    .option("--paper", "make PDFs in its archive edition too; bag-info.txt then says by which version of what")
    .addOption(new Option("--serialise <form>", "as one file").choices(["zip", "tar.gz"]))
    .addOption(
      new Option("--split <size>", "into several bags, none larger than this: 650 MB, 4.7 GB, 2 GiB").argParser(size),
    )
    .addOption(date())
    .addOption(
      new Option("--bagging-date <YYYY-MM-DD>", "the date of bagging; without it the date of the record").argParser(
        day,
      ),
    )
    .addHelpText(
      "after",
      `\nExamples:\n  scarfline bag\n  scarfline bag --out /media/stick --serialise zip\n  scarfline bag --split "4.7 GB"\n${EXIT_CODES}`,
    )
    .action(async (record, options) =>
      exit(await (await import("./bag-command.ts")).bagCommand({ ...options, record }, surroundings)),
    );
}

function addRestore(program: Command, surroundings: Surroundings, exit: (code: number) => void): void {
  program
    .command("restore")
    .summary("bring a record back out of a bag")
    .description(
      "Verifies a bag and, if it has no fault, brings the record in it back into a folder that is new or empty. Of a bag in parts give the folder that holds them all.",
    )
    .argument("<bag>", "a bag's folder, a .zip, a .tar.gz, or the folder of its parts")
    .argument("<dir>", "the new folder")
    .addHelpText("after", `\nExamples:\n  scarfline restore archive/heron-2026-11-20.zip ~/build-record\n${EXIT_CODES}`)
    .action(async (bag, folder) =>
      exit(await (await import("./restore-command.ts")).restoreCommand(bag, folder, surroundings)),
    );
}

function size(text: string): number {
  const bytes = sizeOf(text);
  if (bytes === undefined) throw new InvalidArgumentError("A size is written as 650 MB, 4.7 GB or 2 GiB.");
  return bytes;
}

function digest(text: string): string {
  const digits = text.replaceAll(/\s/g, "").toLowerCase();
  if (!/^[0-9a-f]{16,64}$/.test(digits))
    throw new InvalidArgumentError("A digest is written as 16 to 64 of the digits 0 to 9 and a to f.");
  return digits;
}
