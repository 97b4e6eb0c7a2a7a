/** Front matter of an entry: what happened on a day. */
import type * as z from "zod";
import { amendmentSchema } from "./amends.ts";
import {
  audience,
  block,
  choice,
  clock,
  day,
  difference,
  drawn,
  either,
  file,
  id,
  list,
  measured,
  pieceId,
  quantity,
  share,
  tolerance,
  words,
  worked,
} from "../field.ts";

const DAY_MINUTES = 24 * 60;

const hours = block({
  who: id("Who worked.", "builder"),
  task: words("At what: one of the aircraft's tasks.", "gluing"),
  time: worked("How long.", "2:45", DAY_MINUTES),
  assembly: id("On which assembly, if not the entry's.", "tailplane").optional(),
});

const component = (name: string) =>
  block({
    lot: id(`The lot of the ${name}.`, "R-3").optional(),
    mass: quantity({ dimension: "mass" }, "How much, weighed.").optional(),
    volume: quantity({ dimension: "volume" }, "How much, by the measure.").optional(),
  });

const piece = block({
  id: pieceId("The batch's id, a slash and a number."),
  procedure: id("The procedure it was made by.", "three-leg"),
  lot: id("The timber lot it was made from.", "S-2").optional(),
  thickness: quantity({ dimension: "length" }, "Thickness of the leg that is pressed or pulled.").optional(),
  width: quantity({ dimension: "length" }, "Width across the piece.").optional(),
  overlap: quantity({ dimension: "length", example: "5/8 in" }, "Length of the glued overlap.").optional(),
  trial: id("The trial it was made for; it does not count for its batch then.", "cured-surfaces").optional(),
  preparation: id("Which of the trial's preparations it had.", "abraded").optional(),
});

const batch = block({
  id: id("The batch's id.", "B-014"),
  adhesive: id("Which adhesive was mixed.", "epoxy-a"),
  mixed: clock("When mixing began.").optional(),
  closed: clock("When the last joint was closed; 24:20 is twenty past midnight.", 36).optional(),
  scale: either(["mass", "volume"], "Reading step of the scale or the measure.", ["0.1 g", "1 ml"]).optional(),
  resin: component("resin").optional(),
  hardener: component("hardener").optional(),
  shop: block({
    temperature: quantity({ dimension: "temperature", sign: "any" }, "Of the air.").optional(),
    humidity: share("Relative humidity of the air.", "52 %").optional(),
    surface: quantity(
      { dimension: "temperature", sign: "any", example: "18 °C" },
      "Of the surfaces that were glued.",
    ).optional(),
  }).optional(),
  moisture: share("Moisture of the wood, by a meter.", "10.5 %").optional(),
  timber: list(id("A timber or plywood lot.", "S-2"), "The lots that the glued parts were made from.").optional(),
  joints: list(id("A joint.", "TP-J03"), "The joints it went into.").optional(),
  pieces: list(piece, "The test pieces made from it.").optional(),
});

const test = block({
  piece: pieceId("Which piece was broken."),
  at: clock("When.").optional(),
  failure: choice(["wood", "glue line", "mixed"], "Where it broke."),
  wood_failure: share("Percentage of the glued area that broke in the wood.", "100 %").optional(),
  load: quantity({ dimension: "force" }, "The load at which it broke.").optional(),
  photo: file("A picture of it.", "../photos/b014-1.jpg").optional(),
  witness: id("Who watched.", "helper").optional(),
  note: words("What else was seen.", "Broke along the grain").optional(),
});

const measurement = block({
  what: words("What was measured; in the same words where it is measured again.", "Rib 3, height at the front spar"),
  assembly: id("On which assembly, if not the entry's.", "tailplane").optional(),
  drawing: drawn("What the drawing asks: a measure or its limits.", [
    "62.0 mm",
    "2° 30'",
    "at least 12 mm",
    "at most 3 mm",
    "8 mm to 10 mm",
  ]).optional(),
  tolerance: tolerance().optional(),
  found: measured("What was found.", "62.3 mm"),
  pair: id(
    "A word of your own that both sides share: left and right, or the two faces, are then held against each other too.",
    "rib-3-height",
  ).optional(),
  side: choice(
    ["left", "right", "front", "back", "upper", "lower"],
    "Which side of the pair this is; measured again, the last counts.",
  ).optional(),
  pair_tolerance: difference("How far the two sides may differ from each other.", "±0.5 mm").optional(),
  departure: id("The departure that stands for it, if it or its pair is out of tolerance.", "D-05").optional(),
});

const arm = (what: string, example: string) =>
  quantity(
    { dimension: "length", sign: "any", example },
    `${what} the datum that aircraft.md names: behind it positive, ahead of it negative.`,
  );

const weighing = block({
  part: words(
    "What was weighed; in the same words where it is weighed again, and then the last counts.",
    "Left wing panel, skinned",
  ),
  mass: quantity({ dimension: "mass", example: "18.4 kg" }, "What it weighs."),
  arm: arm("Where its own centre of gravity will lie, from", "1240 mm").optional(),
  assembly: id("Of which assembly, if not the entry's.", "wing").optional(),
  instead_of: list(
    words("A part weighed before.", "Left wing panel, bare"),
    "Parts weighed before that are in this one, and no longer count by themselves.",
  ).optional(),
});

const scales = block({
  what: words("What stood on the scales, and how.", "Whole aircraft, empty, level on its wheels").optional(),
  left: quantity(
    { dimension: "mass", example: "151.2 kg" },
    "What the scale under the left main wheel read, less its tare.",
  ),
  right: quantity(
    { dimension: "mass", example: "150.8 kg" },
    "What the scale under the right main wheel read, less its tare.",
  ),
  nose: quantity(
    { dimension: "mass", sign: "not negative", example: "61.0 kg" },
    "What the scale under the nose wheel read, less its tare.",
  ).optional(),
  tail: quantity(
    { dimension: "mass", sign: "not negative", example: "24.6 kg" },
    "Or what the scale under the tail wheel read, less its tare.",
  ).optional(),
  mains: arm("Where the main wheels stand, from", "1120 mm"),
  wheelbase: quantity(
    { dimension: "length", example: "4180 mm" },
    "From the main wheels to the nose or tail wheel, level.",
  ),
});

const departure = block({
  id: id("The departure's id.", "D-05"),
  what: words("What differs from the drawing.", "Spruce packer added behind the sternpost"),
  why: words("Why.", "Wider glue face"),
  accepted_by: id("Who accepted it that day.", "inspector-1").optional(),
  assembly: id("On which assembly, if not the entry's.", "tailplane").optional(),
  for: audience().optional(),
});

const openItem = block({
  id: id("The open item's id.", "O-11"),
  what: words("What is left for later.", "Curved corner block not fitted yet"),
  before: id(
    "What may not happen before it is done: a hold point's id, or close-up, covering or flight.",
    "close-up",
  ).optional(),
  assembly: id("On which assembly, if not the entry's.", "tailplane").optional(),
  for: audience().optional(),
});

const inspection = block({
  hold_point: id("Which hold point.", "TP-H1"),
  by: id("Who looked.", "inspector-1"),
  result: choice(["signed", "not signed"], "Whether it was signed."),
  reference: words("Number of the paper it was signed on.", "form 12").optional(),
  scan: file("A scan of it.", "form-12.pdf").optional(),
  remarks: words("What was said.", "Clean the drain hole before closing").optional(),
});

const acceptance = block({ departure: id("Which departure.", "D-05"), by: id("Who accepts it.", "inspector-1") });

const recall = block({
  lot: id("Which lot.", "H-2"),
  why: words("What the notice says.", "Maker's notice: hardener off specification"),
  reference: words("Number or date of the notice.", "notice 7 of 2 May").optional(),
});

const cut = block({
  lot: id("The timber or plywood lot it was sawn from; once a day.", "S-2"),
  amount: either(
    ["length", "area", "mass", "volume"],
    "How much that took, in a unit of the same kind as the lot's own amount; offcuts with it, if you reckon so.",
    ["1.2 m", "0.4 m²"],
  ),
});

const rework = block({
  joints: list(id("A joint.", "TP-J03"), "Which joints were opened."),
  why: words("Why.", "Batch B-014 rejected"),
});
const rejection = block({ batch: id("Which batch.", "B-014"), why: words("Why.", "It never set hard") });
const amendment = amendmentSchema({
  hours,
  cut,
  batch,
  piece,
  test,
  measurement,
  weighing,
  scales,
  departure,
  acceptance,
  openItem,
  recall,
  rework,
  rejection,
  inspection,
});

export const entrySchema = block({
  date: day("The day, as in the file's name."),
  title: words("What was done, in a few words.", "Rear spar caps laminated"),
  assembly: id("The assembly that was worked on.", "tailplane"),
  for: audience().optional(),
  hours: list(hours, "Who worked how long at what.").optional(),
  cut: list(cut, "What was sawn from lots of timber and plywood that day.").optional(),
  batches: list(batch, "The batches of adhesive mixed that day.").optional(),
  tests: list(test, "The test pieces broken that day.").optional(),
  measurements: list(measurement, "What was measured.").optional(),
  weighed: list(weighing, "Parts weighed on the way.").optional(),
  scales: scales.optional(),
  departures: list(departure, "Work that differs from the drawing.").optional(),
  accepts: list(acceptance, "Departures of earlier days accepted now.").optional(),
  open_items: block({
    raise: list(openItem, "Work put off.").optional(),
    close: list(id("An open item.", "O-08"), "Open items that are done now.").optional(),
  }).optional(),
  recalls: list(recall, "Notices that a lot must not be trusted.").optional(),
  reworks: list(rework, "Joints that were opened and cleaned of glue.").optional(),
  rejects: list(rejection, "Batches you do not trust, whatever their pieces show.").optional(),
  inspections: list(inspection, "Hold points that someone looked at.").optional(),
  photos: list(
    block({
      file: file("The picture, relative to this file.", "../photos/jig.jpg"),
      alt: words("What is to be seen, for those who cannot see it.", "Both caps in the jig under light clamps"),
      caption: words("A line below the picture.", "Dry run first").optional(),
      for: audience().optional(),
    }),
    "Pictures of the day.",
  ).optional(),
  clips: list(
    block({
      file: file("The clip, relative to this file: .mp4, .m4v or .webm.", "../clips/flex.mp4"),
      poster: file("The picture that stands for it until it is played, relative to this file.", "../photos/flex.jpg"),
      alt: words(
        "What is to be seen and heard, for those who cannot.",
        "The tip is pushed down a hand’s breadth and springs back",
      ),
      caption: words("A line below the clip.", "Twenty kilograms at the tip").optional(),
      for: audience().optional(),
    }),
    "Video clips of the day.",
  ).optional(),
  attachments: list(
    block({
      file: file("The file, relative to this one.", "../papers/invoice.pdf"),
      title: words("What it is.", "Invoice for the plywood"),
      for: audience().optional(),
    }),
    "Papers that belong to the day.",
  ).optional(),
  amends: list(amendment, "Earlier entries that were written down wrong: what is right, and why.").optional(),
});

export type EntrySpec = z.output<typeof entrySchema>;
