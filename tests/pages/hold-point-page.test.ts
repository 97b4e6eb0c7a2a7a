import { parse } from "node-html-parser";
import { describe, expect, it } from "vitest";
import { evidencePages } from "../../layouts/shell/evidence-pages.tsx";
import type { Site } from "../../src/editions/shown.ts";
import { reckon } from "../../src/evidence/evidence.ts";
import { holdPointPage } from "../../src/pages/evidence/hold-point/hold-point-page.ts";
import { editionOf } from "../../src/editions/edition.ts";
import {
  assembly,
  batch,
  departure,
  entry,
  holdPoint,
  inspection,
  joint,
  LOTS,
  openItem,
  record,
} from "../evidence/make.ts";
import { exampleSite } from "./example.ts";

const sheetOf = (site: Site, id: string) => {
  const page = evidencePages(site).find(({ path }) => path === `hold-point/${id}.html`);
  const main = parse(page?.make() ?? "").querySelector("main");
  if (main === null || main === undefined) throw new Error(`no sheet of ${id}`);
  return main;
};
const words = (site: Site, id: string): string => sheetOf(site, id).structuredText.replace(/\s+/g, " ");

/** A wing of which the spar was looked at before; one photograph, one departure and one open item are for fewer readers. */
function wing() {
  return record({
    assemblies: [
      assembly("wing", {
        title: "Wing",
        joints: [joint("W-1", "wing")],
        holdPoints: [holdPoint("W-H1", { title: "Before the skin", assembly: "wing", kind: "close-up" })],
      }),
      assembly("spar", {
        title: "Spar",
        parent: "wing",
        joints: [joint("S-1", "spar"), joint("S-2", "spar")],
        holdPoints: [holdPoint("S-H1", { title: "Box of the spar", assembly: "spar", kind: "close-up" })],
      }),
      assembly("fin", { title: "Fin", joints: [joint("F-1", "fin")] }),
    ],
    lots: LOTS,
    entries: [
      entry("2025-03-10-glue", { assembly: "spar", batches: [batch("B-001", { joints: ["S-2"] })] }),
      entry("2025-03-10-other", {
        assembly: "spar",
        inspections: [inspection("S-H1", { result: "not signed" })],
        departures: [
          departure("D-1", { what: "Longer block", assembly: "spar" }),
          departure("D-2", { what: "Secret shim", assembly: "spar", audience: "archive" }),
          departure("D-3", { what: "Fin raked", assembly: "fin" }),
        ],
        raised: [
          openItem("O-1", { what: "Drain holes", assembly: "spar" }),
          openItem("O-2", { what: "Paint the bench", assembly: "fin" }),
          openItem("O-3", { what: "Cloth on the spar", assembly: "spar", before: "covering" }),
          openItem("O-4", { what: "Fin brackets for the wing", assembly: "fin", before: "W-H1" }),
        ],
      }),
    ],
  });
}

describe("The sheets of a hold point", () => {
  it("go in the order in which an inspector looks, with the place to sign at the end", () => {
    const heads = sheetOf(exampleSite("inspector"), "F-H1")
      .querySelectorAll("h2")
      .map(({ text }) => text);
    expect(heads).toEqual([
      "1. What is looked at",
      "2. Looked at before, and what changed since",
      "3. Joints, the worst first",
      "4. Joints seen, squeeze-out, gaps",
      "5. Recalled, out of date, rejected; rework",
      "6. Departures, who accepted them, conditions met",
      "7. Open items, and what else is open",
      "8. Dimensions, twist, left and right",
      "9. Timber, scarfs and ply",
      "10. Blocks, and holes at fittings",
      "11. Varnish, its lot, margins left bare",
      "12. Drains and vents",
      "13. Fittings, cables, locking",
      "14. Nothing left inside; moisture now",
      "15. The joint that closes it",
      "16. Photographs",
      "17. Signature",
    ]);
    expect(sheetOf(exampleSite("inspector"), "F-H1").querySelectorAll(".signoff")).toHaveLength(1);
  });

  it("tell every need of the hold point once, those of a joint beside the joint", () => {
    const site = exampleSite("inspector");
    const text = words(site, "F-H1");
    expect(text).toContain("O-1 is open since");
    const { joints, needs } = holdPointPage(site.shown, fileOf(site, "F-H1"));
    const told = [...joints.flatMap((line) => line.needs), ...needs];
    expect(told.map(({ sentence }) => sentence).sort()).toEqual(fileOf(site, "F-H1").needs.map(site.shown.say).sort());
    expect(needs.every(({ about }) => about.kind !== "joint")).toBe(true);
  });

  it("have a box or a line for what only eyes can see, and say that the record does not hold it", () => {
    const eyes = sheetOf(exampleSite("inspector"), "F-H1").querySelectorAll(".byeye");
    expect(eyes.length).toBeGreaterThan(10);
    for (const part of eyes) {
      expect(part.querySelector(".label")?.text).toBe("Only eyes can see, the record does not hold it");
      expect(part.querySelectorAll("li").every((item) => item.querySelector(".checklist__box") !== null)).toBe(true);
    }
  });

  it("look at what is inside and at no more: departures, open items asked, earlier hold points, joints the worst first", () => {
    const made = wing();
    const shown = editionOf(made, reckon(made), "archive");
    const page = holdPointPage(shown, must(shown.evidence.holdPoints.get("W-H1")));
    expect(page.inside.map(({ id }) => id)).toEqual(["wing", "spar"]);
    expect(page.earlier.map(({ holdPoint: { id } }) => id)).toEqual(["S-H1"]);
    expect(page.joints.map(({ file }) => file.joint.id)).toEqual(["S-2", "W-1", "S-1"]);
    expect(page.departures.map(({ id }) => id)).toEqual(["D-1", "D-2"]);
    expect(page.openItems.map(({ id }) => id)).toEqual(["O-1", "O-4"]);
    expect(page.toClose.map(({ joint: { id } }) => id)).toEqual(["W-1", "S-1"]);
  });

  it("ask for the same open items as the evidence does", () => {
    const made = wing();
    const shown = editionOf(made, reckon(made), "archive");
    for (const file of shown.evidence.holdPoints.values()) {
      const open = holdPointPage(shown, file)
        .openItems.filter(({ closedIn }) => closedIn === undefined)
        .map(({ id }) => id);
      const needed = file.needs.filter(({ about }) => about.kind === "open item").map(({ about }) => about.id);
      expect(open.sort()).toEqual(needed.sort());
    }
  });

  it("hold nothing in the public edition that is meant for narrower ones, and say so whether there is any or not", () => {
    const made = wing();
    const shown = editionOf(made, reckon(made), "public");
    const text = words({ ...exampleSite("public"), shown }, "W-H1");
    expect(text).not.toContain("D-2");
    expect(text).not.toContain("Secret shim");
    expect(text).toContain("what is meant for narrower editions alone is not on these sheets");
    expect(words(exampleSite("public"), "F-H1")).toContain("what is meant for narrower editions alone is not on these");
  });
});

const fileOf = (site: Site, id: string) => must(site.shown.evidence.holdPoints.get(id));

function must<T>(found: T | undefined): T {
  if (found === undefined) throw new Error("not in the record");
  return found;
}
