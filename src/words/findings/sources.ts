/** Where limits come from: the document or the practice, in words. */
import type { SourceValues } from "../../evidence/codes/sources.ts";
import type { Sentences } from "./catalogue.ts";

export const SOURCES: Sentences<SourceValues> = {
  "source/record": () => "the record itself",
  "source/any-sheet": () => "the adhesive's data sheet",
  "source/any-procedure": () => "the test procedure",
  "source/ac-43-13-sample": () =>
    "FAA AC 43.13-1B, para 1-29h: a sample with each new joint, of the same batch and of scraps of the wood used, tested to destruction after curing. It gives no number: one a batch is this program's default, and laxer",
  "source/ac-43-13-timber": () =>
    "FAA AC 43.13-1B, Table 1-1: slope of grain of spruce no more than 1 in 15; this program's default, where the drawings may ask for more",
  "source/ac-43-13-gluing": () =>
    "FAA AC 43.13-1B, paras 1-6 to 1-11, seen in part: how surfaces are prepared, spread and pressed; each limit is that of the sheet, the procedure or the drawing",
  "source/joint-drawing": ({ title }) => `drawing of the joint: ${title}`,
  "source/handbook-moisture": () => "FAA-H-8083-31, chapter 6: wood at 8 % to 12 % moisture for gluing",
  "source/guarded-acceptance": () => "guarded acceptance as in JCGM 106:2012; doubt of readings as in JCGM 100:2008",
  "source/paint-rule": () => "a painters' rule, borrowed: surfaces at least 3 K above the dew point",
  "source/usual-cure": () => "this program's default, for want of a time in the procedure: three full days",
  "source/usual-room": () =>
    "this program's default, for want of a temperature in the procedure and the data sheet: 20 °C",
  "source/equivalent-age": () =>
    "Arrhenius maturity in the form of EN 1992-1-1, eq. B.10, which is for concrete, as code and worked examples of others have it; used here for adhesive by analogy",
  "source/doubling": () =>
    "a rule of thumb, for want of cure times at several temperatures in the data sheet: the rate of cure doubles every 10 K",
  "source/usual-overlap": () =>
    "this program's default, for want of a limit in the procedure: 2 to 3 thicknesses for a three-leg piece",
  "source/usual-scarf": () =>
    "common practice, for want of a slope in the drawing: scarfs no steeper than 1 in 12; ANC-18 has that slope too, for skins of plywood",
  "source/statics": () => "statics of the test piece",
  "source/trace": () => "traceability of materials: what is recalled is found again by lot",
  "source/ac-20-27-tasks": () =>
    "FAA AC 20-27G, amateur-built fabrication and assembly checklist: each task one point in tenths; more than 50 % is the major portion; as tables that reprint it have it",
  "source/ac-20-27-total": () => "the same checklist, the line that adds the tasks up",
  "source/by-country": () => "rules of several countries: France counts time, others tasks or parts",
  "source/faa-scales": () => "FAA-H-8083-1, weighing the aircraft: centre of gravity at D ± F·L/W, as reprints have it",
  "source/moments": () => "mass times arm, by definition",
  "source/any-finish-sheet": () => "the maker's sheet of the product",
  "source/bare-faces": () =>
    "FAA AC 43.13-1B, chapter 1, section 1: faces to be bonded are clean and free of grease, wax and paint",
  "source/sheet": ({ sheet }) => sheet,
  "source/procedure": ({ title }) => `procedure: ${title}`,
  "source/ac-43-13-sanding": () => "FAA AC 43.13-1B, para 1-6",
  "source/sitka-spruce": () => "this program's default: clear Sitka spruce at 12 %, Wood Handbook FPL-GTR-190",
  "source/loss": () => "this program's default: a quarter more than is spread stays in the cup and is squeezed out",
};
