import { defined } from "../defined.ts";
import { sealLine } from "../archive/seal/chain.ts";
import { seal } from "../archive/seal/seal.ts";
import { askForStamp, keepReply, timeWords } from "../archive/stamp/stamp.ts";
import { printable } from "../archive/finding.ts";
import { refuseWithout } from "../archive/tool.ts";
import { check } from "../check.ts";
import { recordFolder, type RecordNamed, recordRequest } from "./record-folder.ts";
import { EXIT, type Surroundings, WrongUse } from "./surroundings.ts";
import { notesWords, problemWords, tellerFor } from "./teller.ts";

interface SealOptions extends RecordNamed {
  /** The day of the seal; without it today. */
  readonly date?: string;
  readonly sign?: string;
  readonly stamp?: boolean;
  /** File of a time-stamp authority's reply, and of its certificates. */
  readonly reply?: string;
  readonly authority?: string;
}

export async function sealCommand(options: SealOptions, surroundings: Surroundings): Promise<number> {
  const { date, sign, stamp = false, reply, authority } = options;
  if (reply !== undefined) {
    if (stamp || date !== undefined || sign !== undefined)
      throw new WrongUse("`--reply` sets no seal: it keeps the time stamp of one that was set. Leave out the rest.");
    return replyCommand(recordFolder(options, surroundings), reply, authority, surroundings);
  }
  if (authority !== undefined) throw new WrongUse("`--authority` is for a reply: --reply FILE --authority FILE");
  if (stamp) await refuseWithout("openssl");
  const tell = tellerFor(surroundings);
  const request = recordRequest(defined({ content: options.content, record: options.record }), surroundings);
  const { content } = request;
  const day = date ?? request.today;
  if (day > request.today) throw new WrongUse(`${day} is still to come; a seal is set on its day or afterwards.`);
  const { problems, notes } = await check(request, tell);
  if (notes.length > 0) tell.line(notesWords(notes));
  if (problems.length > 0) {
    surroundings.err(`${problemWords(problems, surroundings.hasColours)}\nNothing was sealed.\n`);
    return EXIT.problems;
  }
  const files = tellerFor(surroundings, (done, of) => `Sealing: ${done} of ${of} files`);
  const sealed = await seal(defined({ content, date: day, key: sign }), files.progress);
  if ("unchanged" in sealed) {
    files.line(`Nothing changed since the seal of ${sealed.unchanged.date}; no other was set.`);
    if (stamp) await tellQuery(content, files.line);
    return EXIT.fine;
  }
  files.line(`Sealed ${sealed.seal.files} files. This line was added to ${content}/seals.txt:`);
  files.line(`  ${sealLine(sealed.seal).trimEnd()}`);
  files.line(
    `The digest in it is that of ${content}/${sealed.seal.manifest}. Keep a copy of the line elsewhere, on paper or with someone: it is what proves the day.`,
  );
  if (sealed.signature !== undefined) files.line(`Signed: ${content}/${sealed.signature}`);
  if (stamp) await tellQuery(content, files.line);
  return EXIT.fine;
}

async function tellQuery(content: string, line: (text: string) => void): Promise<void> {
  const { seal, query, stood } = await askForStamp(content);
  line(
    `${stood ? "The query for a time stamp was there already" : "Wrote the query for a time stamp"}: ${content}/${query}`,
  );
  line(
    `It holds the digest of the seal of ${seal.date}, and nothing of the record. Nothing was sent. Send it to an authority of`,
  );
  line("time stamps by RFC 3161 (as application/timestamp-query), and keep its reply: scarfline seal --reply FILE");
}

async function replyCommand(
  content: string,
  file: string,
  authority: string | undefined,
  surroundings: Surroundings,
): Promise<number> {
  const { line } = tellerFor(surroundings);
  const { seal, reply, files } = await keepReply(content, file, authority, surroundings.now());
  line(`${printable(reply.by) || "The authority"} stamped the seal of ${seal.date} at ${timeWords(reply.at)}. Kept:`);
  for (const kept of files) line(`  ${content}/${kept}`);
  if (authority === undefined)
    line("Whose certificate that is was not checked, which needs the authority's own: --authority FILE");
  line("The next seal holds these files too; set it, and their removal will show.");
  return EXIT.fine;
}
