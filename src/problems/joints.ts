/** Joints, their stages and their reworks: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const JOINTS = {
  "joint-twice": {
    title: "A joint twice in one list",
    happened: "A joint stands twice in the joints of a batch.",
    why: "It was glued once.",
    mend: "Take one away.",
    example: ["@ entries/2025-03-08-caps.md", "- joints: [SP-J01, SP-J02]", "+ joints: [SP-J01, SP-J02, SP-J01]"],
  },
  "glued-twice": {
    title: "A joint glued again without being opened",
    happened: "A joint that an earlier entry glued is glued again.",
    why: "A second gluing over the first is no repair. If it was opened, or is glued in stages, that must be said.",
    mend:
      "Say under `reworks` that it was opened and cleaned; or under `stages`, of each batch in it, which stage it glued; or write the joint that was glued. " +
      "One that was said to be complete has no further stage: it is opened first, or that is amended.",
    example: [
      "@ entries/2025-03-22-looked.md",
      "- joints: [SP-J02]",
      "- inspections:",
      "+ joints: [SP-J01]",
      "+ inspections:",
    ],
  },
  "not-glued": {
    title: "A joint opened that was never glued",
    happened: "A rework names a joint that no earlier entry glued.",
    why: "One of the two entries is wrong.",
    mend: "Write the joint that was opened, or add it to the batch that glued it.",
    example: ["@ entries/2025-03-22-looked.md", "- - { joints: [SP-J02], why", "+ - { joints: [SP-J02, SP-J03], why"],
  },
  "no-stage": {
    title: "No stage of a joint",
    happened: "What stands where a stage of a joint belongs is not the number of one.",
    why: "Stages are counted, so that one that was left out is found.",
    mend: "Give its number, and how many there are where that is known: `2 of 3`.",
    example: [
      "@ entries/2025-03-08-caps.md",
      "- measurements:",
      "+ stages:",
      "+   - { joint: SP-J01, stage: 3 of 2 }",
      "+ measurements:",
    ],
  },
  "stage-without-glue": {
    title: "A stage that no batch glued",
    happened: "A stage of a joint names no batch, and none of its entry went into that joint.",
    why: "A stage is as good as the glue in it; without any it is one that is still to come.",
    mend: "Name the batch under `batches` of the stage or the joint in the batch's own list, or take the stage away.",
    example: [
      "@ entries/2025-03-22-looked.md",
      "- inspections:",
      "+ stages:",
      "+   - { joint: SP-J01, stage: 2 }",
      "+ inspections:",
    ],
  },
  "stage-of-other-glue": {
    title: "A stage of a batch that is not in the joint",
    happened: "A stage of a joint names a batch that did not go into that joint, or was mixed only later.",
    why: "One of the two is wrong: the stage, or the joints of the batch.",
    mend: "Name the batch that glued the stage, or correct the joints of the batch.",
    example: [
      "@ entries/2025-03-22-looked.md",
      "- inspections:",
      "+ stages:",
      "+   - { joint: SP-J03, stage: 1, batches: [B-001] }",
      "+ inspections:",
    ],
  },
  "stage-never-glued": {
    title: "A stage opened that was never glued",
    happened: "A rework names a stage that no earlier entry says of its joint.",
    why: "Nothing is taken out by it: glue that is of no stage stays in the joint.",
    mend: "Write the stage that was opened, or take `stages` away if all of the joint was.",
    example: [
      "@ entries/2025-03-22-looked.md",
      "- - { joints: [SP-J02], why",
      "+ - { joints: [SP-J02], stages: [2], why",
      "- joints: [SP-J02]",
      "- inspections:",
      "+ joints: [SP-J03]",
      "+ inspections:",
    ],
  },
} as const satisfies Explained;
