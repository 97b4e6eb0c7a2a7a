import type { JSX } from "preact";
import type { Frame } from "../../src/charts/frame.ts";

/** Lines that look alike, as one path. */
export function Strokes({
  class: name,
  paths,
}: {
  readonly class: string;
  readonly paths: readonly string[];
}): JSX.Element | null {
  return paths.length === 0 ? null : <path class={name} d={paths.join("")} />;
}

/** Grid and words of both axes; above the upright one its unit. */
export function Axes({ frame, unit }: { readonly frame: Frame; readonly unit?: string }): JSX.Element {
  const { left, right, top, bottom, xTicks, yTicks } = frame;
  const across = (strong: boolean): string[] =>
    yTicks.filter((tick) => tick.strong === strong).map(({ at }) => `M${left} ${at}H${right}`);
  return (
    <g class="axes">
      <Strokes class="grid" paths={across(false)} />
      <Strokes class="axis" paths={across(true)} />
      <Strokes
        class="grid grid--year"
        paths={xTicks.filter(({ strong }) => strong).map(({ at }) => `M${at} ${top}V${bottom}`)}
      />
      <Strokes class="tick" paths={xTicks.filter(({ strong }) => !strong).map(({ at }) => `M${at} ${bottom}v5`)} />
      {unit === undefined ? null : (
        <text x="0" y={top - 13}>
          {unit}
        </text>
      )}
      <g text-anchor="end">
        {yTicks.map(({ at, label }) => (
          <text x={left - 7} y={at + 4}>
            {label}
          </text>
        ))}
      </g>
      <g text-anchor="middle">
        {xTicks.map(({ at, label, strong }) => (
          <text class={strong ? "year" : undefined} x={at} y={bottom + 18}>
            {label}
          </text>
        ))}
      </g>
    </g>
  );
}
