import type { JSX } from "preact";
import { NARROW, WIDE, type Room } from "../../src/charts/frame.ts";
import { individualsDrawing, type IndividualsInput } from "../../src/charts/individuals.ts";
import type { SeriesView } from "../../src/pages/evidence/evidence-charts.ts";
import { Axes } from "../parts/axes.tsx";
import { DayCell, Id, type Where } from "./parts.tsx";

/** Fewer points make no picture; the table has them. */
const LEAST_DRAWN = 3;

/** Values above, the ranges between one and the next below them, and a table of both. */
export function IndividualsFigure({ series, site, from }: Where & { readonly series: SeriesView }): JSX.Element {
  const { id, title, says, values, ranges } = series;
  return (
    <figure class="chart individuals" id={id}>
      <figcaption>
        <h3>{title}</h3>
        <p>{says}</p>
      </figcaption>
      {values.points.length < LEAST_DRAWN ? null : (
        <div class="chart__drawing">
          <Svg id={`${id}-wide`} input={values} room={{ ...WIDE, height: 300 }} part="wide" title={title} says={says} />
          <Svg id={`${id}-narrow`} input={values} room={NARROW} part="narrow" title={title} says={says} />
        </div>
      )}
      {values.points.length < LEAST_DRAWN ? null : (
        <div class="chart__drawing">
          <Svg
            id={`${id}-range-wide`}
            input={ranges}
            room={{ ...WIDE, height: 170 }}
            part="wide"
            title={`${title}: ranges`}
            says="How far each batch lies from the one before."
          />
          <Svg
            id={`${id}-range-narrow`}
            input={ranges}
            room={{ ...NARROW, height: 170 }}
            part="narrow"
            title={`${title}: ranges`}
            says="How far each batch lies from the one before."
          />
          <p class="small quiet">Above: each batch. Below: how far it lies from the one before.</p>
        </div>
      )}
      <Table series={series} site={site} from={from} />
    </figure>
  );
}

interface SvgProps {
  readonly id: string;
  readonly input: IndividualsInput;
  readonly room: Room;
  readonly part: "wide" | "narrow";
  readonly title: string;
  readonly says: string;
}

function Svg({ id, input, room, part, title, says }: SvgProps): JSX.Element {
  const { frame, path, points, levels } = individualsDrawing(input, room);
  const named = room.names > 40;
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${room.width} ${room.height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{says}</desc>
      <Axes frame={frame} />
      {levels.map(({ name, form, y, nameY }) => (
        <g class={`level level--${form}`}>
          <path d={`M${frame.left} ${y}H${frame.right}`} />
          {named ? (
            <text x={frame.right + 10} y={nameY + 4}>
              {name}
            </text>
          ) : null}
        </g>
      ))}
      <path class="individuals__line" d={path} />
      {points.map(({ x, y, label, marked }) =>
        marked ? (
          <g class="individuals__out">
            <path d={`M${x} ${y - 7}l7 7l-7 7l-7 -7z`} />
            {label === undefined ? null : (
              <Beside x={x} y={y} right={frame.right}>
                {label}
              </Beside>
            )}
          </g>
        ) : (
          <circle class="individuals__point" cx={x} cy={y} r="3.2" />
        ),
      )}
    </svg>
  );
}

/** Words beside a point, on the side where there is room. */
function Beside({
  x,
  y,
  right,
  children,
}: {
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly children: string;
}): JSX.Element {
  const room = right - x > 60;
  return (
    <text x={room ? x + 12 : x - 12} y={y + 4} text-anchor={room ? "start" : "end"}>
      {children}
    </text>
  );
}

function Table({ series, site, from }: Where & { readonly series: SeriesView }): JSX.Element {
  const { title, rows } = series;
  const withPieces = rows.some(({ pieces }) => pieces !== undefined);
  return (
    <details class="chart__table">
      <summary>These figures as a table</summary>
      <section class="scroll" tabIndex={0} aria-label={`${title}, as a table`}>
        <table class="data">
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">Batch</th>
              <th scope="col">Day</th>
              {withPieces ? (
                <th scope="col" class="number">
                  Pieces
                </th>
              ) : null}
              <th scope="col" class="number">
                Value
              </th>
              <th scope="col" class="number">
                From the one before
              </th>
              <th scope="col">Limits</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ batch, day, value, pieces, range, outside, rangeOutside }) => (
              <tr>
                <th scope="row">
                  <Id site={site} from={from} kind="batch" id={batch} />
                </th>
                <DayCell day={day} />
                {withPieces ? <td class="number">{pieces ?? ""}</td> : null}
                <td class="number">{value}</td>
                <td class="number">{range}</td>
                <td>{outside ? "outside" : rangeOutside ? "range outside" : ""}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
