/** Every code of a finding. It begins with the rule that finds it. */
import type { CoatValues } from "./coats.ts";
import type { ClimateValues } from "./climate.ts";
import type { GlueUpValues } from "./gluing.ts";
import type { JointValues } from "./joints.ts";
import type { LotValues } from "./lots.ts";
import type { MixingValues } from "./mixing.ts";
import type { PieceValues } from "./pieces.ts";

export interface FindingValues
  extends MixingValues,
    GlueUpValues,
    ClimateValues,
    LotValues,
    PieceValues,
    JointValues,
    CoatValues {}
