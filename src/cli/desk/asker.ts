import { select, text } from "@clack/prompts";
import { answerFault, type Asker, type Question } from "../../desk/question.ts";
import { WrongUse } from "../surroundings.ts";

type Streams = Pick<Parameters<typeof text>[0], "input" | "output">;

const NONE = "";

/** Asks on a terminal. Whoever stops in the middle has changed nothing. */
export function askerOn(streams: Streams): Asker {
  return {
    ask: async (question) => {
      const answer = await (question.choices === undefined ? typed(question, streams) : chosen(question, streams));
      if (typeof answer === "symbol") throw new WrongUse("Stopped. Nothing was written.");
      return answer === NONE ? undefined : answer;
    },
  };
}

async function typed(question: Question, streams: Streams): Promise<string | symbol> {
  const { asks, example, suggestion, optional = false } = question;
  const answer = await text({
    ...streams,
    message: optional ? `${asks} (nothing, if you want to say it later)` : asks,
    ...(suggestion === undefined ? { placeholder: `such as: ${example}` } : { initialValue: suggestion }),
    validate: (given = "") => {
      if (given.trim() !== "") return answerFault(question, given.trim());
      return optional ? undefined : `type it, such as: ${example}`;
    },
  });
  return typeof answer === "symbol" ? answer : (answer ?? "").trim();
}

function chosen({ asks, choices = [], optional = false }: Question, streams: Streams): Promise<string | symbol> {
  const options = [...choices.map((value) => ({ value, label: value })), { value: NONE, label: "say it later" }];
  return select({ ...streams, message: asks, options: optional ? options : options.slice(0, -1) });
}
