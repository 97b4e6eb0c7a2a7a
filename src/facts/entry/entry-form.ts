/** The form of an entry, and what of it a later one can amend. */
import { audience, block, day, list, words } from "../field.ts";
import { idOf } from "../id.ts";
import { batchAmended, batchSchema } from "../glue/batch.ts";
import { cutAmended, cutSchema } from "../glue/cut.ts";
import { remainderAmended, remainderSchema } from "../glue/remainder.ts";
import { inUseAmended, inUseSchema } from "../glue/in-use.ts";
import { recallAmended, recallSchema } from "../glue/recall.ts";
import { rejectionAmended, rejectionSchema } from "../glue/rejection.ts";
import { postCureAmended, postCureSchema } from "../glue/post-cure.ts";
import { reworkAmended, reworkSchema } from "../glue/rework.ts";
import { stageAmended, stageSchema } from "../glue/stage.ts";
import { testAmended, testSchema } from "../glue/test.ts";
import { acceptanceAmended, acceptanceSchema } from "../work/acceptance.ts";
import { coatAmended, coatSchema } from "../work/coat.ts";
import { departureAmended, departureSchema } from "../work/departure.ts";
import { fittingAmended, fittingSchema } from "../work/fitting.ts";
import { hoursAmended, hoursSchema } from "../work/hours.ts";
import { inspectionAmended, inspectionSchema } from "../work/inspection.ts";
import { measurementAmended, measurementSchema } from "../work/measurement.ts";
import { openItemsAmended, openItemsSchema } from "../work/open-item.ts";
import { scalesAmended, scalesSchema } from "../work/scales.ts";
import { thermometerAmended, thermometerSchema } from "../work/thermometer.ts";
import { weighingAmended, weighingSchema } from "../work/weighing.ts";
import { type Amending, type AmendingOf, exempt, TELLS_NOTHING } from "./amending.ts";
import { amendmentSchema } from "./amends.ts";
import { attachmentSchema } from "./attachment.ts";
import { clipSchema } from "./clip.ts";
import { photoSchema } from "./photo.ts";

const shape = {
  date: day("The day, as in the file's name."),
  title: words("What was done, in a few words.", "Rear spar caps laminated"),
  assembly: idOf(
    "assembly",
    "The assembly that was worked on; without it the day belongs to no part: a purchase, a recall, a jig, a visit.",
    "tailplane",
  ).optional(),
  for: audience().optional(),
  hours: list(hoursSchema, "Who worked how long at what.").optional(),
  cut: list(cutSchema, "What was sawn from lots of timber and plywood that day.").optional(),
  remains: list(remainderSchema, "What was weighed that day as left in lots of adhesive.").optional(),
  in_use: inUseSchema
    .meta({
      description: "What is in use from this entry on, where a batch says nothing else; in an entry that all may read.",
    })
    .optional(),
  batches: list(batchSchema, "The batches of adhesive mixed that day.").optional(),
  stages: list(stageSchema, "Stages of joints that are glued over several sessions.").optional(),
  tests: list(testSchema, "The test pieces broken that day.").optional(),
  thermometer: list(
    thermometerSchema,
    "Readings of a thermometer of least and greatest, each for the time since it was set.",
  ).optional(),
  post_cures: list(postCureSchema, "Joints that were heated after gluing.").optional(),
  measurements: list(measurementSchema, "What was measured.").optional(),
  weighed: list(weighingSchema, "Parts weighed on the way.").optional(),
  scales: scalesSchema.meta({ description: "The aircraft on its scales." }).optional(),
  fitted: list(fittingSchema, "Parts bought in that were fitted that day.").optional(),
  coats: list(coatSchema, "What was put on that day: primer, varnish, dope, paint, fabric, tape.").optional(),
  departures: list(departureSchema, "Work that differs from the drawing.").optional(),
  accepts: list(acceptanceSchema, "Departures of earlier days accepted now.").optional(),
  open_items: openItemsSchema.meta({ description: "What is still to be done, raised or closed that day." }).optional(),
  recalls: list(recallSchema, "Notices that a lot must not be trusted.").optional(),
  reworks: list(reworkSchema, "Joints that were opened and cleaned of glue.").optional(),
  rejects: list(rejectionSchema, "Batches you do not trust, whatever their pieces show.").optional(),
  inspections: list(inspectionSchema, "Hold points that someone looked at.").optional(),
  photos: list(photoSchema, "Pictures of the day.").optional(),
  clips: list(clipSchema, "Video clips of the day.").optional(),
  attachments: list(attachmentSchema, "Papers that belong to the day.").optional(),
};

/** What of an entry a later one can amend. */
export const entryAmended: AmendingOf<typeof shape> = {
  date: {
    how: "day",
    says: "The day on which it happened, where the entry was written under another; the entry keeps its file's name.",
  },
  title: TELLS_NOTHING,
  assembly: exempt("lines name an assembly of their own where the entry's is not theirs"),
  for: exempt("what was shown once is not hidden by an amendment"),
  hours: hoursAmended,
  cut: cutAmended,
  remains: remainderAmended,
  in_use: inUseAmended,
  batches: batchAmended,
  stages: stageAmended,
  tests: testAmended,
  thermometer: thermometerAmended,
  post_cures: postCureAmended,
  measurements: measurementAmended,
  weighed: weighingAmended,
  scales: scalesAmended,
  fitted: fittingAmended,
  coats: coatAmended,
  departures: departureAmended,
  accepts: acceptanceAmended,
  open_items: { how: "within", parts: openItemsAmended },
  recalls: recallAmended,
  reworks: reworkAmended,
  rejects: rejectionAmended,
  inspections: inspectionAmended,
  photos: TELLS_NOTHING,
  clips: TELLS_NOTHING,
  attachments: TELLS_NOTHING,
};

/** Front matter of an entry. What it amends is not itself amended: another amendment of the same entry is. */
export const entrySchema = block({
  ...shape,
  amends: list(
    amendmentSchema(shape, entryAmended as { readonly [key: string]: Amending }),
    "Earlier entries that were written down wrong: what is right, and why.",
  ).optional(),
});
