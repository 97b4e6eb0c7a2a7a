import type { JSX } from "preact";
import type { Frame } from "../src/charts/frame.ts";

/** Grid and words of both axes. */
export function Axes({ frame }: { readonly frame: Frame }): JSX.Element {
  const { left, right, top, bottom, xTicks, yTicks } = frame;
  return (
    <g class="axes">
      {yTicks.map(({ at, label, strong }) => (
        <>
          <path class={strong ? "axis" : "grid"} d={`M${left} ${at}H${right}`} />
          <text x={left - 7} y={at + 4} text-anchor="end">{label}</text>
        </>
      ))}
      {xTicks.map(({ at, label, strong }) => (
        <>
          <path class={strong ? "grid grid--year" : "tick"} d={strong ? `M${at} ${top}V${bottom}` : `M${at} ${bottom}v5`} />
          <text class={strong ? "year" : undefined} x={at} y={bottom + 18} text-anchor="middle">{label}</text>
        </>
      ))}
    </g>
  );
}
