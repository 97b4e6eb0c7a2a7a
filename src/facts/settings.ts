/** Front matter of what stands for the whole build. */
import {
  audience,
  block,
  choice,
  count,
  day,
  either,
  file,
  id,
  list,
  plusMinusShare,
  quantity,
  range,
  ratio,
  share,
  slope,
  tenths,
  words,
  worked,
  zone,
} from "./field.ts";

const picture = block({
  file: file("The picture, relative to this file.", "photos/outside.jpg"),
  alt: words("What is to be seen, for those who cannot see it.", "The fuselage upside down on trestles"),
  caption: words("A line below the picture.", "First time out of the workshop").optional(),
});

export const aircraftSchema = block({
  name: words("The aircraft's name.", "Heron"),
  type: words("Its type, in your own words.", "two-seat low-wing monoplane of spruce and plywood"),
  units: choice(["metric", "imperial"], "The units that pages show beside what was typed."),
  time_zone: zone(),
  start: day("The day the build began.", "2023-03-04"),
  target: worked("Hours you mean to work each week.", "9 h").optional(),
  people: list(
    block({
      id: id("The word that stands for this person in the record.", "builder"),
      name: words("Full name.", "Ana Example"),
      public: words("The name shown where full names are withheld.", "Ana"),
      role: choice(["builder", "helper", "inspector", "visitor"], "What this person does here."),
      for: audience().optional(),
      authority: words("By whose authority an inspector signs.", "inspector of the owners' association").optional(),
    }),
    "Everyone who stands in the record.",
  ),
  tasks: list(words("A word for a kind of work.", "gluing"), "The words allowed for `task:`."),
  public_shows: list(
    choice(
      ["names", "suppliers", "certificates", "attachments", "ledgers"],
      "A kind of fact that the public edition withholds by default.",
    ),
    "What the public edition may show although it is withheld by default.",
  ).optional(),
  datum: words("From where arms are measured for weighing.", "Front face of the firewall, level").optional(),
  design_weight: quantity(
    { dimension: "mass", example: "290 kg" },
    "The empty weight that the plans reckon with.",
  ).optional(),
  visit: words("How to visit the workshop.", "On the first Saturday of each month; write first.").optional(),
  photo: picture.optional(),
});

const part = (who: string) => tenths(`The part of it done ${who}, in tenths; without it none.`, "0.3").optional();

const buildTask = block({
  id: id("The task's id, or its number in the authority's list.", "W-3"),
  title: words("What the task is.", "Fabricate the wing ribs"),
  applicable: choice(["yes", "no"], "Whether this aircraft has such a thing at all; without it yes.").optional(),
  credit: block({
    maker: part("by the maker of the kit"),
    paid: part("by paid help"),
    assembly: part("by amateurs, putting together"),
    fabrication: part("by amateurs, making parts"),
  }).optional(),
});

export const assemblySchema = block({
  title: words("What the part is called.", "Tailplane"),
  parent: id("The assembly that this one is a part of.", "tail").optional(),
  planned: worked("Hours planned for it, without those of the assemblies within it.", "120 h").optional(),
  finished: day("The day it was finished.", "2025-06-30").optional(),
  drawing: block({
    file: file("A drawing or picture of the assembly, relative to this file.", "tailplane.svg"),
    alt: words("What is to be seen.", "The tailplane from above, with its joints numbered"),
  }).optional(),
  joints: list(
    block({
      id: id("The joint's id.", "TP-J01"),
      title: words("Which joint it is.", "Rear spar, upper cap to web"),
      at: block({
        x: share("From the left edge of the drawing.", "31 %"),
        y: share("From the top edge of the drawing.", "42 %"),
      }).optional(),
      area: quantity({ dimension: "area" }, "Area of the glue line.").optional(),
      drawing: words("Where it stands in the plans.", "sheet 14").optional(),
    }),
    "The glued joints of the assembly.",
  ).optional(),
  hold_points: list(
    block({
      id: id("The hold point's id.", "TP-H1"),
      title: words("What is to be looked at.", "Inside of the box before the last skin"),
      kind: choice(["close-up", "covering", "flight"], "What may not happen before someone has looked."),
      joints: list(
        id("A joint.", "TP-J01"),
        "The joints that must be shown; without it all joints of the assembly and of those within it.",
      ).optional(),
    }),
    "Where work stops until someone has looked.",
  ).optional(),
  tasks: list(
    buildTask,
    "Tasks of building it, each one point, with who did how many tenths; the four add up to 1.",
  ).optional(),
});

const mix = (words: string, example: string) =>
  block({
    ratio: ratio(`Resin to hardener ${words}.`, example),
    tolerance: plusMinusShare("How far the ratio may be off, as the data sheet has it.").optional(),
  });

export const adhesiveSchema = block({
  title: words("The adhesive.", "Epoxy A, two parts"),
  sheet: words("Name and revision of the maker's data sheet.", "Data sheet EA-7, revision 3, May 2022"),
  sheet_file: file("The data sheet itself, relative to this file.", "ea-7-rev-3.pdf").optional(),
  by_mass: mix("by mass", "100 : 83").optional(),
  by_volume: mix("by volume", "1 : 1").optional(),
  density: block({
    resin: quantity({ dimension: "density", example: "1.16 g/cm³" }, "Density of the resin."),
    hardener: quantity({ dimension: "density", example: "0.97 g/cm³" }, "Density of the hardener."),
  }).optional(),
  working_life: list(
    block({
      temperature: quantity({ dimension: "temperature", sign: "any", example: "20 °C" }, "At this temperature"),
      mass: quantity({ dimension: "mass", example: "100 g" }, "and with this much mixed at once"),
      time: quantity({ dimension: "duration", example: "45 min" }, "it may be worked this long."),
    }),
    "The sheet's working life, a line for each temperature and mass.",
  ).optional(),
  temperature: range("temperature", "Shop temperature while gluing and curing.", "15 °C to 30 °C", "any").optional(),
  humidity: range("share", "Relative humidity while gluing.", "at most 70 %").optional(),
  cure: list(
    block({
      temperature: quantity({ dimension: "temperature", sign: "any", example: "20 °C" }, "At this temperature"),
      time: quantity({ dimension: "duration", example: "7 d" }, "it is cured after this time."),
    }),
    "The sheet's cure times, a line for each temperature.",
  ).optional(),
  shelf_life: quantity(
    { dimension: "duration", example: "730 d" },
    "How long a lot keeps from the day it is received.",
  ).optional(),
  wood_moisture: range("share", "Moisture of the wood to be glued.", "8 % to 12 %").optional(),
  spread: quantity({ dimension: "spread" }, "How much is spread on the joint.").optional(),
});

export const procedureSchema = block({
  title: words("What the procedure is called.", "Three-leg piece, quarter inch"),
  form: choice(["three-leg", "single-lap", "block-shear"], "The form of the test piece."),
  overlap: range("thicknesses", "Overlap as multiples of the thickness.", "2 to 3 thicknesses").optional(),
  pieces: count("How many pieces each batch must have.", "3").optional(),
  least_cure: block({
    time: quantity({ dimension: "duration", example: "3 d" }, "The least time before a piece is broken."),
    temperature: quantity(
      { dimension: "temperature", sign: "any", example: "20 °C" },
      "The temperature that this time holds for.",
    ).optional(),
  }).optional(),
  least_temperature: quantity(
    { dimension: "temperature", sign: "any", example: "15 °C" },
    "The temperature assumed where none was noted.",
  ).optional(),
  wood_failure: share("The least percentage of wood failure.", "75 %").optional(),
  stress: quantity({ dimension: "stress" }, "The least shear stress a piece must bear.").optional(),
  wood: block({
    crushing: quantity(
      { dimension: "stress", example: "5610 psi" },
      "Strength of the wood in compression along the grain.",
    ),
    shear: quantity({ dimension: "stress", example: "1150 psi" }, "Strength of the wood in shear along the grain."),
  }).optional(),
});

export const lotSchema = block({
  title: words("What was delivered.", "Spruce planks, 25 mm"),
  material: choice(["resin", "hardener", "timber", "plywood", "other"], "What it is."),
  adhesive: id("The adhesive that a resin or hardener belongs to.", "epoxy-a").optional(),
  number: words("The maker's lot number.", "40217").optional(),
  supplier: words("Who delivered it.", "A timber merchant").optional(),
  received: day("The day it came.", "2024-11-02"),
  expiry: day("The last day it may be used.", "2026-11-01").optional(),
  certificate: file("Its certificate, relative to this file.", "s-2.pdf").optional(),
  amount: either(["mass", "volume", "length", "area"], "How much came.", ["2 kg", "1 l", "24 m"]).optional(),
  for: audience().optional(),
  species: words("The species of wood.", "Sitka spruce").optional(),
  moisture: share("Moisture when it came.", "11.2 %").optional(),
  grain_slope: slope().optional(),
  rings: quantity({ dimension: "per length" }, "Growth rings.").optional(),
  density: quantity({ dimension: "density", example: "430 kg/m³" }, "Its density.").optional(),
});

export const trialSchema = block({
  title: words("What the trial is called.", "Glue over cured glue"),
  question: words("What it is to answer.", "Does glue hold on a surface with cured glue on it?"),
  stated: day("The day the expectation was written down."),
  expectation: words(
    "What you expected before any piece was broken.",
    "Sanded to bare wood is best, wiped only is worst.",
  ),
  preparations: list(
    block({
      id: id("A word for this way of preparing pieces.", "abraded"),
      what: words("What was done to the surfaces.", "Cured glue abraded with 80 grit, dust wiped off"),
    }),
    "The ways of preparing pieces that are compared.",
  ),
  for: audience().optional(),
});
