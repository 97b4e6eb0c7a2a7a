/** Aircraft, adhesives, procedures, lots and trials: their files and the ids they name. */
import { type Desk, expectAttachment, expectId, expectPicture, report, soundOf } from "./desk.ts";

export function checkSettings(desk: Desk): void {
  for (const filed of soundOf(desk, "aircraft")) expectPicture(desk, filed, ["photo", "file"], filed.spec.photo?.file);
  for (const filed of soundOf(desk, "adhesive")) expectAttachment(desk, filed, ["sheet_file"], filed.spec.sheet_file);
  checkLots(desk);
  checkTrials(desk);
}

function checkLots(desk: Desk): void {
  for (const filed of soundOf(desk, "lot")) {
    const { spec } = filed;
    expectAttachment(desk, filed, ["certificate"], spec.certificate);
    expectId(desk, filed, ["adhesive"], ["adhesive"], spec.adhesive);
    const component = spec.material === "resin" || spec.material === "hardener";
    if (component && spec.adhesive === undefined && filed.whole) {
      report(desk, filed, ["material"], {
        code: "missing",
        message: `a lot of ${spec.material} belongs to an adhesive`,
        expected: "`adhesive: ID` with the name of a file in adhesives/",
        mend: `add \`adhesive: ${[...desk.ids.of("adhesive")][0] ?? "epoxy-a"}\``,
      });
    }
    if (spec.expiry !== undefined && spec.expiry < spec.received) {
      report(desk, filed, ["expiry"], {
        code: "date",
        message: "this lot had expired before it came",
        expected: `a day on or after ${spec.received}`,
        found: spec.expiry,
        mend: "look at both dates",
      });
    }
  }
}

function checkTrials(desk: Desk): void {
  for (const filed of soundOf(desk, "trial")) {
    const seen = new Set<string>();
    filed.spec.preparations.forEach(({ id }, index) => {
      if (seen.has(id))
        report(desk, filed, ["preparations", index, "id"], {
          code: "duplicate-id",
          message: `the preparation ${id} stands here twice`,
          found: id,
          mend: "give one of them another id",
        });
      seen.add(id);
    });
  }
}
