/** English: every sentence that evidence says, by code. Another language is another folder like this one. */
import type { Catalogue } from "./catalogue.ts";
import { CLIMATE } from "./climate.ts";
import { COATS } from "./coats.ts";
import { GLUING } from "./gluing.ts";
import { HOLD_POINTS } from "./hold-points.ts";
import { JOINTS } from "./joints.ts";
import { LIMITS } from "./limits.ts";
import { LOTS } from "./lots.ts";
import { MIXING } from "./mixing.ts";
import { PIECES } from "./pieces.ts";
import { RULES } from "./rules.ts";
import { SOURCES } from "./sources.ts";
import { TRIALS } from "./trials.ts";

export const ENGLISH: Catalogue = {
  ...MIXING,
  ...GLUING,
  ...CLIMATE,
  ...LOTS,
  ...COATS,
  ...PIECES,
  ...JOINTS,
  ...HOLD_POINTS,
  ...TRIALS,
  ...LIMITS,
  ...SOURCES,
  ...RULES,
  withheld: () => "Rests on something this edition does not show.",
};
