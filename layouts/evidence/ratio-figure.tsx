import type { JSX } from "preact";
import { ratioGauge } from "../../src/charts/ratio-gauge.ts";
import type { BatchFile } from "../../src/evidence/types.ts";
import type { BatchPage } from "../../src/pages/evidence/batch-page.ts";
import { percent, signedPercent } from "../../src/words/numbers.ts";

const WIDTH = 360;

/** The ratio as mixed against its band, with what the scale alone leaves in doubt. */
export function RatioFigure({
  file,
  page,
}: {
  readonly file: BatchFile;
  readonly page: BatchPage;
}): JSX.Element | null {
  const { ratio, batch } = file;
  if (ratio === undefined) return null;
  const nominal = (ratio.by === "volume" ? page.adhesive?.byVolume : page.adhesive?.byMass)?.typed ?? "";
  return (
    <figure class="gauge">
      <Drawing ratio={ratio} nominal={nominal} />
      <figcaption class="small quiet">
        Batch {batch.id}: as mixed (lozenge) in the band of the data sheet; the bar is what the scale alone leaves in
        doubt.
      </figcaption>
    </figure>
  );
}

type Ratio = NonNullable<BatchFile["ratio"]>;

function Drawing({ ratio, nominal }: { readonly ratio: Ratio; readonly nominal: string }): JSX.Element {
  const gauge = ratioGauge(ratio.error, ratio.doubt, ratio.tolerance);
  const x = (share: number): number => Math.round(share * WIDTH * 10) / 10;
  const said = `Ratio as mixed ${signedPercent(ratio.error)} off ${nominal}${ratio.tolerance === undefined ? "" : `; band ±${percent(ratio.tolerance, 1)}`}${ratio.doubt === undefined ? "" : `; the scale leaves ±${percent(ratio.doubt, 1)} in doubt`}.`;
  return (
    <svg viewBox={`0 0 ${WIDTH} 74`} role="img" aria-label={said}>
      <path class="gauge__axis" d={`M0 42H${WIDTH}`} />
      {gauge.band === undefined ? null : (
        <rect class="gauge__band" x={x(gauge.band[0])} y="28" width={x(gauge.band[1] - gauge.band[0])} height="28" />
      )}
      {gauge.band === undefined || ratio.tolerance === undefined ? null : (
        <>
          <text class="gauge__limit" x={x(gauge.band[0])} y="71" text-anchor="middle">
            −{percent(ratio.tolerance, 1)}
          </text>
          <text class="gauge__limit" x={x(gauge.band[1])} y="71" text-anchor="middle">
            +{percent(ratio.tolerance, 1)}
          </text>
        </>
      )}
      <path class="gauge__nominal" d={`M${x(gauge.nominal)} 24V60`} />
      <text class="gauge__limit" x={x(gauge.nominal)} y="71" text-anchor="middle">
        {nominal}
      </text>
      {gauge.doubt === undefined ? null : (
        <path
          class="gauge__doubt"
          d={`M${x(gauge.doubt[0])} 42H${x(gauge.doubt[1])}M${x(gauge.doubt[0])} 37v10M${x(gauge.doubt[1])} 37v10`}
        />
      )}
      <path class="gauge__found" d={`M${x(gauge.found)} 35l6 7-6 7-6-7z`} />
      <text class="gauge__value" x={Math.min(Math.max(x(gauge.found), 24), WIDTH - 24)} y="18" text-anchor="middle">
        {signedPercent(ratio.error)}
      </text>
    </svg>
  );
}
