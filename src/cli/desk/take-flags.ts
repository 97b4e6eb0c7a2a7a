/** The flags of `take`: each is the answer to a question. */
import { type Command, InvalidArgumentError, Option } from "commander";
import { EARLIER_KEYS } from "../../facts/values.ts";

export type Pairs = readonly (readonly [word: string, value: string])[];

export interface TakeFlags {
  readonly column?: Pairs;
  readonly merged?: Pairs;
  readonly personIs?: Pairs;
  readonly taskIs?: Pairs;
  readonly assemblyIs?: Pairs;
  readonly photosOf?: Pairs;
  readonly everyWho?: string;
  readonly everyTask?: string;
  readonly source?: string;
  readonly days?: string;
  readonly decimal?: string;
  readonly numbers?: string;
  readonly nearestMinute?: string;
  readonly several?: string;
  readonly logger?: string;
  readonly setAside?: boolean;
  readonly again?: boolean;
}

const AGAIN = "; may be given again";

export function addTakeFlags(command: Command): void {
  const pairs = (flag: string, says: string): Command =>
    command.addOption(new Option(flag, `${says}${AGAIN}`).argParser(pair));
  pairs("--column <key=header>", `hours: the column with the ${EARLIER_KEYS.join(", ")}, or \`none of these\``);
  pairs("--merged <key=yes>", "hours: whether an empty cell of a column says what the one above it says");
  pairs("--person-is <word=id>", "hours: who is meant by a word; several with + between them");
  pairs("--task-is <word=task>", "hours: the task that a word is");
  pairs("--assembly-is <word=id>", "hours: the assembly that a word is, or `no assembly`");
  pairs("--photos-of <day=entry>", "photographs: the entry that those of a day go with");
  command
    .option("--every-who <id>", "hours: who worked, where no column says it")
    .option("--every-task <task>", "hours: the task, where no column says it")
    .option("--source <words>", "hours: where the lines come from, where no column says it")
    .option("--days <forms>", "hours: the forms of its days, parted by commas, such as D.M.YYYY")
    .option("--decimal <mark>", "hours: the decimal mark")
    .option("--numbers <unit>", "hours: what a number alone is, hours or minutes")
    .option("--nearest-minute <yes or no>", "hours: whether 0.33 stands for 20 minutes")
    .option("--several <how>", "hours: whether the time of several people is `each` one's, or `divided`")
    .option("--set-aside", "hours: keep lines that cannot be read out of all sums, named beside the file")
    .option("--again", "hours: take lines too that say what another table of the record says, and count them twice")
    .option("--logger <words>", "loggers: what the file leaves open, such as `zone: local`");
}

function pair(typed: string, before: Pairs = []): Pairs {
  const at = typed.lastIndexOf("=");
  if (at < 1 || at === typed.length - 1) throw new InvalidArgumentError("Give a word, = and what it is.");
  return [...before, [typed.slice(0, at).trim(), typed.slice(at + 1).trim()]];
}
