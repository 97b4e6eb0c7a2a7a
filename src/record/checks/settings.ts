/** Aircraft, adhesives, procedures, lots and trials: their files and the ids they name. */
import { isLotPart } from "../../facts/build/adhesive-kind.ts";
import { checkParts } from "./materials/components.ts";
import type { Spec } from "../../facts/kinds.ts";
import type { Sound } from "../filed.ts";
import { type CheckContext, expectAttachment, expectId, expectPicture, report, soundOf } from "./context.ts";

export function checkSettings(context: CheckContext): void {
  for (const filed of soundOf(context, "aircraft"))
    expectPicture(context, filed, ["photo", "file"], filed.spec.photo?.file);
  for (const filed of soundOf(context, "adhesive"))
    expectAttachment(context, filed, ["sheet_file"], filed.spec.sheet_file);
  checkLots(context);
  checkParts(context);
  checkTrials(context);
}

function checkLots(context: CheckContext): void {
  for (const filed of soundOf(context, "lot")) {
    const { spec } = filed;
    expectAttachment(context, filed, ["certificate"], spec.certificate);
    expectId(context, filed, ["adhesive"], ["adhesive"], spec.adhesive);
    expectId(context, filed, ["finish"], ["finish"], spec.finish);
    checkProduct(context, filed);
    const component = isLotPart(spec.material);
    const known = [...context.ids.of("adhesive")];
    if (component && spec.adhesive === undefined && filed.whole) {
      report(context, filed, ["material"], {
        code: "lot-without-adhesive",
        message: `a lot of ${spec.material} belongs to an adhesive`,
        expected: `\`adhesive:\` with the name of a file in adhesives/${known.length === 0 ? "; there is none yet" : `: ${known.join(", ")}`}`,
        mend: "add `adhesive: …`, with the one it is a part of",
      });
    }
    if (spec.expiry !== undefined && spec.expiry < spec.received) {
      report(context, filed, ["expiry"], {
        code: "expired-on-arrival",
        message: "this lot had expired before it came",
        expected: `a day on or after ${spec.received}`,
        found: spec.expiry,
        mend: "look at both dates",
      });
    }
  }
}

function checkProduct(context: CheckContext, filed: Sound<Spec<"lot">>): void {
  if (filed.spec.material !== "finish" || filed.spec.finish !== undefined || !filed.whole) return;
  const known = [...context.ids.of("finish")];
  report(context, filed, ["material"], {
    code: "lot-without-product",
    message: "a lot of finish belongs to a product",
    expected: `\`finish:\` with the name of a file in finishes/${known.length === 0 ? "; there is none yet" : `: ${known.join(", ")}`}`,
    mend: "add `finish: …`, with the product that it is of",
  });
}

function checkTrials(context: CheckContext): void {
  for (const filed of soundOf(context, "trial")) {
    const seen = new Set<string>();
    filed.spec.preparations.forEach(({ id }, index) => {
      if (seen.has(id))
        report(context, filed, ["preparations", index, "id"], {
          code: "duplicate-id",
          message: `the preparation ${id} stands here twice`,
          found: id,
          mend: "give one of them another id",
        });
      seen.add(id);
    });
  }
}
