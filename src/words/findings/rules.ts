/** What each rule asks, and what follows, in plain words: those of the about page. */
import type { RuleValues } from "../../evidence/codes/rules.ts";
import type { Sentences } from "./catalogue.ts";

export const RULES: Sentences<RuleValues> = {
  "title/mix-ratio": () => "Mix ratio",
  "rule/mix-ratio": () =>
    "The second part over the first (hardener over resin, water over powder), as weighed or measured, lies within the data sheet's tolerance of its ratio. Outside it the batch is rejected. " +
    "An amount, a ratio or a tolerance that is missing leaves it not shown. The ratio is not to be varied to change the time of cure (AC 43.13-1B, para 1-4). " +
    "Of an adhesive of one part it is not asked; of parts applied apart only where the sheet gives one.",
  "title/mix-doubt": () => "What the scale can show",
  "rule/mix-doubt": () =>
    "The error of the mix and the doubt that the reading step of the scale alone leaves, together, stay within the tolerance. " +
    "Where they do not, the scale cannot show that the mix was right: not shown.",
  "title/lot-known": () => "Lots known",
  "rule/lot-known": () =>
    "The lots of all parts of the adhesive but water are noted; each that is missing leaves the batch not shown. A timber lot that is not noted is a caution.",
  "title/lot-in-date": () => "Lots in date",
  "rule/lot-in-date": () =>
    "Each part of the adhesive that comes in lots is used no later than the last day of its lot: the expiry date, else the day received and the sheet's shelf life. " +
    "Later rejects the batch. Where neither is known nothing shows that the lot was in date, and the batch is not shown.",
  "title/lot-recalled": () => "Lots not recalled",
  "rule/lot-recalled": () =>
    "No lot that went into it has been recalled. A recall does not change what is found of the batch; its joints are quarantined.",
  "title/timber-grade": () => "Timber on arrival",
  "rule/timber-grade": () =>
    "The grain of spruce, and of timber of no noted species, slopes no more than 1 in 15. A steeper lot leaves each batch and joint it is in not shown, until a rework says what replaced it; " +
    "one of which no slope is noted is a caution on its batch. What the lot's file says that the drawings ask (`asked`) stands above that: " +
    "slope, rings, density, moisture; outside it, or where it is asked and not noted, batch and joint are not shown.",
  "title/shop-temperature": () => "Shop temperature",
  "rule/shop-temperature": () =>
    "The coldest of air, surfaces, wood and the logger's readings while it was glued is no colder than the data sheet asks, and the warmest no warmer. Outside its limits the batch is rejected. " +
    "Where no temperature is noted the logger answers, if its readings bracket that time; where neither knows, it is not shown. A note and a logger more than 2 K apart are told.",
  "title/shop-humidity": () => "Shop humidity",
  "rule/shop-humidity": () =>
    "The air of the shop is within the data sheet's limits of humidity, where it gives any, as noted and as logged. Outside them the batch is rejected; known by neither, it is not shown. " +
    "Where the sheet gives none, a humidity that is not known is a caution. A note and a logger more than 10 points apart are told.",
  "title/wood-moisture": () => "Moisture of the wood",
  "rule/wood-moisture": () =>
    "A meter reading of the wood, and each that is noted of a part, lies within the data sheet's range, else within 8 % to 12 %. " +
    "Outside it the batch is rejected. Without a reading of the wood the " +
    "moisture that wood would settle at is estimated, from the logger's two weeks before or else from the climate noted: in range it is a caution, out of " +
    "range or without a climate the batch is not shown; nor is it where a lot of its wood came less than two weeks " +
    "before it was glued, or no lot is noted.",
  "title/dew-point": () => "Dew point",
  "rule/dew-point": () =>
    "The surfaces, or else the shop, are at least 3 K above the dew point of the air. Closer than that is a caution.",
  "title/working-life": () => "Working life",
  "rule/working-life": () =>
    "The joint is closed within the time that the data sheet gives for so much adhesive in so warm a shop, or as the resin where that is warmer, from mixing or, where nothing is mixed, from spreading. Later rejects the batch. A time, an " +
    "amount or a row of the sheet that is missing leaves it not shown.",
  "title/lot-storage": () => "How lots were kept",
  "rule/lot-storage": () =>
    "From the day a lot of adhesive came until the batch was mixed, the shop's logger stayed within the temperatures at which the data sheet keeps it. Readings outside, and time that was not logged, are a caution: " +
    "the record does not say where the lot stood.",
  "title/post-cure": () => "Heated after gluing",
  "rule/post-cure": () =>
    "Where the data sheet asks that joints are heated once they are glued, each joint was, after it was closed, as warm and as long as it asks. What is asked and not noted is not shown; nor is what was too cool, too short or too hot, " +
    "and too hot is not mended by heating again. " +
    "Test pieces lie in the heat with them: a piece of which that is not noted, or not before it was broken, counts for nothing. " +
    "Where the sheet asks no heat, a piece that was heated before it was broken, and no joint of its batch with it, " +
    "counts for nothing either. A joint heated all the same above the sheet's temperatures, and any at which it has " +
    "the adhesive cure, before it had cured rejects the batch; heat above what cured adhesive may see is a caution.",
  "title/service-heat": () => "Heat after the cure",
  "rule/service-heat": () =>
    "Since the joint was closed, up to the day before the record's last, the shop stayed by logger and thermometer at or below the temperature that the data sheet lets cured adhesive see. Above it, and time that was not logged, is a caution: " +
    "the part may have stood elsewhere, or in the sun.",
  "title/spread": () => "Enough to spread",
  "rule/spread": () =>
    "What was mixed for a session, over the area of the joints it went into, is no less than the spread entered of the data sheet, for both faces together. Less is a caution, as is an amount or an area that is not noted. " +
    "A spread is called the sheet's only where the sheet is attached.",
  "title/test-pieces": () => "Test pieces",
  "rule/test-pieces": () =>
    "As many test pieces as the procedure asks, else this program's one a batch, are made from the batch, are broken, and pass. One that fails rejects the batch whatever the " +
    "others show. Any piece not broken yet leaves it pending, even where enough have passed; too few that could still pass leave it not shown. " +
    "A gap in their numbers, and one declared later than it was glued, is a caution. Pieces broken dry some days after gluing tell little of how long the bond lasts in damp and heat.",
  "title/sample-wood": () => "Samples of the joint",
  "rule/sample-wood": () =>
    "Pieces are of the same batch and of the wood that was glued: the same lot, or scraps of the parts. " +
    "Another lot of the same species is a caution; " +
    "one whose species is written as not known, or as one of several, is like no other. " +
    "A piece of another species or kind, or of no noted lot, counts for nothing; where two woods are glued, a piece of each, or of both together, has to pass. " +
    "Where nothing says what wood was glued, nothing is shown.",
  "title/cure-temperature": () => "Temperature while it cured",
  "rule/cure-temperature": () =>
    "From mixing until the least cure of its pieces has passed, the shop's logger, or a thermometer of least and greatest, shows nothing below or above the data sheet's temperatures. " +
    "Anything outside rejects the batch. So does what they show later, until its joints had cured, above those " +
    "temperatures and any at which the sheet has it cure or be heated; cold then makes the joints wait. " +
    "Where the sheet limits the cure, a time that is not wholly shown leaves the batch not shown, unless all its joints are said to be secondary: then it is a caution. " +
    "While the cure runs it waits for what is to come, and for what may not have been read out since the last reading.",
  "title/trial-pieces": () => "Trial pieces do not count",
  "rule/trial-pieces": () => "Pieces made for a trial are judged by the trial and never count for their batch.",
  "title/builders-rejection": () => "Rejected by the builder",
  "rule/builders-rejection": () => "A batch that the builder rejects is rejected, whatever its pieces show.",
  "title/glue-up": () => "The glue-up as asked",
  "rule/glue-up": () =>
    "What the sheet, the procedure that a session says it followed and the drawing of a joint ask of the glue-up is held against what is noted of it. Not as asked rejects the batch; asked and not noted leaves it not shown. " +
    "A procedure gives the method and never that it was followed. A dry spot, a drop of water that stood in a bead and cured adhesive bonded again as it was leave it not shown whoever asks; what nothing asks is told and decides nothing.",
  "title/by-default": () => "By default",
  "rule/by-default": () =>
    "What a batch does not say of its adhesive, the lots of it, the scale and the sizes of its pieces stands as an entry of that day or before it says that it was in use. It is told as such, a caution, and counts as if it had been typed. " +
    "Amounts, times, readings, the wood and what was done are never taken by default.",
  "title/amended": () => "Amended",
  "rule/amended": () =>
    "What was written down wrong is put right in a later entry, which says why. Everything is reckoned from what stands now, on the day it was first " +
    "written down for; what was written first stays readable. It is a caution and decides nothing by itself.",
  "title/seconded": () => "Amended without a second person",
  "rule/seconded": () =>
    "An amendment may worsen a verdict by itself. To better one it names, under `seen_by`, someone who is " +
    "no builder of it and saw the source; one of the wood of a piece that had been broken betters none. " +
    "Until then the worst counts of what stands now and what stood before it.",
  "title/piece-broken": () => "Broken",
  "rule/piece-broken": () => "A test piece shows nothing until it has been broken.",
  "title/piece-glued": () => "Glued from a cup that could be worked",
  "rule/piece-glued": () =>
    "A piece with a time of its own was glued within the working life of its cup. Later, or where that cannot be told, it shows nothing: inconclusive. Its cure counts from that time; without one it was glued with the cup's last joint.",
  "title/failure-mode": () => "Where it broke",
  "rule/failure-mode": () =>
    "The piece breaks in the wood, with at least the procedure's percentage of wood failure. In the glue line, or below that percentage, it " +
    "fails, whatever its shape and cure. A percentage that is missing, or that has no limit to be held against, leaves it inconclusive. " +
    "So does a leg that was crushed, a piece that was not opened, and the face veneer of plywood unless the procedure says that this counts.",
  "title/full-cure": () => "Broken after its least cure",
  "rule/full-cure": () =>
    "The piece cured for at least the procedure's least time before it was broken: in the time that passed and, where a " +
    "temperature is known, in what that time is worth at the temperature that the least cure is for. Too little of either is too early and " +
    "proves nothing: cool makes time count for less, and warmth never makes up for time. " +
    "That is the least cure of the piece, and not the sheet's own, for which the joint waits: one broken before the sheet's says so.",
  "title/cure-warmth": () => "Warmth of the cure",
  "rule/cure-warmth": () =>
    "What a time of cure is worth is summed up over its temperatures: the logger's where it has readings, of two readings the lower; else the " +
    "shop's as noted when it was glued, in a gap no more than the readings at its ends; else the least that the procedure asks. How the rate depends on " +
    "temperature comes from the data sheet's times at several temperatures, else it doubles for every 10 K. Beyond those temperatures warmth gains nothing and cold loses what the slower of both loses; below the sheet's least temperature nothing counts. Where no temperature is known only " +
    "the days count, which is a caution.",
  "title/overlap": () => "A shape that can show a weak glue line",
  "rule/overlap": () =>
    "The overlap in thicknesses lies within the procedure's limits. Too long, the wood may give way before a weak glue line shows; too short, it is not the piece that the procedure knows: inconclusive. " +
    "So is one that shows less than three thicknesses do, whatever the procedure allows, and one of wood whose strength is not known. " +
    "A block longer than three thicknesses is judged as a lap. Of a lap the thinner leg counts; of three legs the pressed one, and no outer one is less than half as thick. Sizes are asked of every form.",
  "title/piece-load": () => "Load",
  "rule/piece-load": () =>
    "The stress on the glue faces is at least that of the procedure, where it asks one. Below it, or where no load was read, the glue line was not shown to be tried: inconclusive. " +
    "So is a load above what the leg can carry (1.4 times its crushing strength) or below half of the wood's shear strength, this program's own measures, until it is explained.",
  "title/piece-timber": () => "Timber of the piece",
  "rule/piece-timber": () => "The timber that the piece was made from has not been recalled. Else it is a caution.",
  "title/piece-wood": () => "Legs that their lots can give",
  "rule/piece-wood": () =>
    "A leg of plywood is as thick as the sheet of its lot, within a tenth, and no leg is thicker than its plank. One that its lot cannot give, or of plywood of no noted thickness, shows nothing: inconclusive.",
  "title/stock": () => "No more used than came",
  "rule/stock": () =>
    "What the batches took of a lot of adhesive, or what was cut from a lot of timber, is no more than what came of it. More is a caution: an amount or a lot is noted wrong. " +
    "What was weighed as left in a lot of adhesive is what came less what the batches took, within 5 % of what came, this program's own measure; else it is a caution. Neither changes a verdict.",
  "title/joint-glued": () => "Glued, and by which batch",
  "rule/joint-glued": () =>
    "A joint is as good as the worst of the batches that are in it now. Glue taken out by rework counts no more, and only what comes after it does, " +
    "but for the glue of stages that the rework left closed. Wood that is still in it, or that a rework put in, " +
    "is tried by a piece of its kind from one of these batches; else it is not shown.",
  "title/in-service": () => "Work after the first flight",
  "rule/in-service": () =>
    "A joint that was glued or opened after the first flight is asked for by a hold point before return to service. Where none is, that is a caution. " +
    "Such a hold point is passed by an inspector who has not worked on it, or by whoever is said to be allowed to sign it, own work too, and that on a paper; what has been open again only since the first flight it asks for itself.",
  "title/joint-measured": () => "Measured at the joint",
  "rule/joint-measured": () =>
    "What was measured at a joint is within what its drawing asks: a scarf is no steeper than that, or than 1 in 12 where the drawing gives no slope; of a range the steeper end counts. What is outside leaves the joint not shown, " +
    "until it is measured again within, or a departure that it names is accepted. A scarf that nobody measured is told by nothing.",
  "title/joint-stages": () => "Glued in stages",
  "rule/joint-stages": () =>
    "A joint that is glued over several sessions is as good as the worst batch of all its stages, and shown only once each of them is glued and the joint is said to be complete. " +
    "Until then it is pending; said to be complete with a stage left out, or with a batch in it that is of no stage, it is not shown. The most stages that are said of it count.",
  "title/joint-cure": () => "The joint's own cure",
  "rule/joint-cure": () =>
    "Each batch in a joint has cured for the time that its data sheet gives near room temperature, or else for the least cure of its pieces, in days and in what they are worth at that temperature. " +
    "Until then the joint is pending, though its batches be shown; where that time has passed and the record does not show it, it is not shown. Where the sheet limits the cure only what a logger or a thermometer " +
    "shows counts, unless the joint is said to be secondary. A hold point signed, a joint above it opened, or the part weighed before that is told.",
  "title/joint-quarantine": () => "Quarantine",
  "rule/joint-quarantine": () =>
    "A joint that holds a rejected batch or a recalled lot is quarantined until it has been reworked with a batch of its own.",
  "title/coat-lots": () => "Lots of what is put on",
  "rule/coat-lots": () =>
    "The lot of each coat is noted, in date by its expiry or the sheet's shelf life, and not recalled. Past its date, or recalled, rejects the coat; a lot or a date that is not known leaves it not shown.",
  "title/coat-air": () => "Air when it was put on",
  "rule/coat-air": () =>
    "The air was within the sheet's limits of temperature and humidity when it was put on, as noted and, where a time is noted and its readings bracket that, as logged: outside by either rejects the coat. " +
    "Known by neither, where the sheet limits it, leaves it not shown, and so does an estimate, or a note of no time of day where the logger went beyond the limits that day. Of the air while it dried nothing is asked.",
  "title/coat-interval": () => "After the coat before",
  "rule/coat-interval": () =>
    "The next coat of a product at a place is put on no sooner and no later after the one before than the sheet says: else the coat is rejected. Where no time of day is noted all of that day counts, by its worse end; what that leaves open is not shown. " +
    "A coat of which the one before is not in the record is not shown.",
  "title/coat-drying": () => "Dried",
  "rule/coat-drying": () =>
    "The sheet's time of drying has passed by the beginning of the record's day, counted from the coat, or from the end of its day where no time is noted. Until then the coat is pending. It is counted in time alone, however cool or damp it was. Found dry later than that is a caution.",
  "title/coated-faces": () => "Glued where something was put on",
  "rule/coated-faces": () =>
    "A batch glued on an assembly that had primer, varnish, dope or paint on it before, where the coat does not say what was kept bare for gluing, is a caution: which faces were coated the record does not know.",
};
