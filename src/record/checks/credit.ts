/** Tasks of building: each is one point, and its tenths add up to it. */
import type { Sound } from "../filed.ts";
import { inTenths } from "../../facts/quantity/tenths.ts";
import type { Spec } from "../../facts/kinds.ts";
import { type CheckContext, report, soundOf, whereIs } from "./context.ts";

type AssemblyFile = Sound<Spec<"assembly">>;
type TaskSpec = NonNullable<AssemblyFile["spec"]["tasks"]>[number];

const WHOLE = 10;

export function checkCredit(context: CheckContext): void {
  const seen = new Map<string, string>();
  for (const filed of soundOf(context, "assembly")) {
    (filed.spec.tasks ?? []).forEach((task, index) => {
      checkOnce(context, filed, index, task, seen);
      checkTask(context, filed, index, task);
    });
  }
}

function checkOnce(
  context: CheckContext,
  filed: AssemblyFile,
  index: number,
  { id }: TaskSpec,
  seen: Map<string, string>,
): void {
  const before = seen.get(id.toLowerCase());
  if (before === undefined) seen.set(id.toLowerCase(), whereIs(filed, ["tasks", index]));
  else
    report(context, filed, ["tasks", index, "id"], {
      code: "duplicate-id",
      message: `the task ${id} stands in the record twice`,
      expected: "each task once, as it is one point",
      found: `${id} here and at ${before}`,
      mend: "give one of them another id, or take it away",
    });
}

function checkTask(context: CheckContext, filed: AssemblyFile, index: number, { applicable, credit }: TaskSpec): void {
  if (applicable === "no" && credit !== undefined) {
    report(context, filed, ["tasks", index, "credit"], {
      code: "credit-not-applicable",
      message: "a task that does not apply is credited to nobody",
      expected: "`applicable: no` or `credit:`",
      mend: "take one of the two away",
    });
  }
  if (applicable === "no" || !filed.whole) return;
  if (credit === undefined) {
    report(context, filed, ["tasks", index], {
      code: "no-credit",
      message: "of this task it is not said who did it",
      expected: "`credit:` in tenths, or `applicable: no`",
      mend: "add `credit: { assembly: …, fabrication: … }` with the tenths as they are",
    });
    return;
  }
  const parts = [credit.maker, credit.paid, credit.assembly, credit.fabrication].filter((part) => part !== undefined);
  const sum = parts.reduce((tenths, part) => tenths + part.tenths, 0);
  if (sum === WHOLE) return;
  const found = parts.length === 0 ? "nothing" : `${parts.map(({ typed }) => typed).join(" + ")} = ${inTenths(sum)}`;
  const mend =
    sum < WHOLE
      ? `credit the ${inTenths(WHOLE - sum)} that is missing`
      : `take away the ${inTenths(sum - WHOLE)} that is too much`;
  report(context, filed, ["tasks", index, "credit"], {
    code: "credit-sum",
    message: "the tenths of this task do not add up to 1",
    expected: "maker, paid, assembly and fabrication that add up to 1",
    found,
    mend,
  });
}
