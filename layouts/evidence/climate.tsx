import type { JSX } from "preact";
import { climateDrawing, type ClimateInput } from "../../src/charts/climate.ts";
import { NARROW, WIDE, type Room } from "../../src/charts/frame.ts";
import { anchor, relative } from "../../src/pages/address.ts";
import { climatePage, type ClimatePage, type Three } from "../../src/pages/evidence/climate.ts";
import { monthWords } from "../../src/words/dates.ts";
import { counted } from "../../src/words/lists.ts";
import { Axes } from "../parts/axes.tsx";
import { Page, Prose } from "../shell/page.tsx";
import { ListTable, None, Section, Title, type Level, type Where } from "./parts.tsx";

export function Climate({ site }: Pick<Where, "site">): JSX.Element {
  const from = "climate.html";
  return (
    <Page
      site={site}
      path={from}
      kind="evidence"
      title="Climate of the workshop"
      description="Temperature and humidity of the workshop as logged, with glue-ups marked."
    >
      <Title place={<a href={relative(from, "evidence.html")}>Evidence</a>} title="Climate of the workshop">
        <p class="title__lead">
          Temperature and humidity as the logger in the workshop wrote them down, and the days on which something was
          glued.
        </p>
      </Title>
      <ClimateParts site={site} from={from} level="h2" />
    </Page>
  );
}

/** The readings drawn, by month, their gaps and their files. */
export function ClimateParts({ site, from, level }: Where & { readonly level: Level }): JSX.Element {
  const page = climatePage(site.shown);
  if (page.logs.length === 0)
    return (
      <None>
        No readings of a logger are shown. Cure is then counted by the temperature noted when a batch was glued.
      </None>
    );
  return (
    <>
      {page.temperature === undefined ? null : (
        <Figure id="temperature" title="Temperature" level={level} input={page.temperature} />
      )}
      {page.humidity === undefined ? null : (
        <Figure id="humidity" title="Relative humidity" level={level} input={page.humidity} />
      )}
      <Section id="months" title="Month by month" level={level}>
        <Months page={page} />
      </Section>
      <Section id="gaps" title="Times without readings" level={level}>
        <Gaps page={page} />
      </Section>
      <Section id="logs" title="The files of the logger" level={level}>
        <Logs page={page} site={site} from={from} />
      </Section>
    </>
  );
}

/** Room on a wide page where nothing is named beside the plot. */
const BROAD: Room = { ...WIDE, height: 300 };

function Figure({
  id,
  title,
  level: Heading,
  input,
}: {
  readonly id: string;
  readonly title: string;
  readonly level: Level;
  readonly input: ClimateInput;
}): JSX.Element {
  const { gaps, marks } = input;
  const without =
    gaps.length === 0
      ? ""
      : ` ${counted(gaps.length, "time")} without readings ${gaps.length === 1 ? "is" : "are"} hatched.`;
  const says = `The band runs from the least to the greatest reading of each day. ${counted(marks.length, "batch was", "batches were")} glued in that time: a lozenge stands at what was noted then, an open one on the axis where nothing was.${without}`;
  return (
    <figure class="chart climate" id={id}>
      <figcaption>
        <Heading>{title}</Heading>
        <p>{says}</p>
      </figcaption>
      <div class="chart__drawing">
        <Svg id={`${id}-wide`} input={input} room={BROAD} part="wide" title={title} says={says} />
        <Svg id={`${id}-narrow`} input={input} room={NARROW} part="narrow" title={title} says={says} />
      </div>
    </figure>
  );
}

interface SvgProps {
  readonly id: string;
  readonly input: ClimateInput;
  readonly room: Room;
  readonly part: "wide" | "narrow";
  readonly title: string;
  readonly says: string;
}

function Svg({ id, input, room, part, title, says }: SvgProps): JSX.Element {
  const { frame, band, gaps, marks } = climateDrawing(input, room);
  return (
    <svg
      class={`chart__${part}`}
      viewBox={`0 0 ${room.width} ${room.height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{says}</desc>
      <defs>
        <pattern id={`${id}-hatch`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path class="climate__hatch" d="M0 0V5" />
        </pattern>
      </defs>
      <Axes frame={frame} />
      {gaps.map(({ x, width }) => (
        <rect
          class="climate__gap"
          x={x}
          y={frame.top}
          width={width}
          height={frame.bottom - frame.top}
          fill={`url(#${id}-hatch)`}
        />
      ))}
      <path class="climate__band" d={band} />
      {marks.map(({ x, y, noted, words }) => (
        <path class={noted ? "climate__mark" : "climate__mark climate__mark--open"} d={`M${x} ${y - 5}l5 5-5 5-5-5z`}>
          <title>{words}</title>
        </path>
      ))}
    </svg>
  );
}

const HEADS = ["Month", "Least", "Mean", "Greatest", "Least", "Mean", "Greatest"] as const;

function Months({ page }: { readonly page: ClimatePage }): JSX.Element {
  const number = (word: string): { word: string; number: true } => ({ word, number: true });
  const [month, ...figures] = HEADS;
  const quantity = (at: number): string => (at < 3 ? "temperature" : "humidity");
  return (
    <ListTable
      caption="Temperature and relative humidity by month; means are weighed by time"
      heads={[
        month,
        ...figures.map((word, at) => number(`${word} ${quantity(at)}`)),
        number("Without readings"),
        number("Batches"),
      ]}
    >
      {page.months.map(({ month: of, temperature, humidity, without, batches }) => (
        <tr>
          <th scope="row">{monthWords(of)}</th>
          <Cells three={temperature} />
          <Cells three={humidity} />
          <td class="number">{without}</td>
          <td class="number">{batches}</td>
        </tr>
      ))}
    </ListTable>
  );
}

function Cells({ three }: { readonly three: Three }): JSX.Element {
  return (
    <>
      {three.map((figure) => (
        <td class="number">{figure}</td>
      ))}
    </>
  );
}

function Gaps({ page }: { readonly page: ClimatePage }): JSX.Element {
  if (page.gaps.length === 0) return <None>None: no two readings are further apart than what counts as a gap.</None>;
  return (
    <>
      <p class="measure">
        Over these times nothing is known by the logger. Cure is then counted by what was noted when a batch was glued,
        and by no more than the readings before and after.
      </p>
      <ListTable
        caption="Each time without readings, by the workshop’s clock"
        heads={["From", "To", { word: "Lasted", number: true }]}
      >
        {page.gaps.map(({ from, to, lasted }) => (
          <tr>
            <td class="day">{from}</td>
            <td class="day">{to}</td>
            <td class="number">{lasted}</td>
          </tr>
        ))}
      </ListTable>
    </>
  );
}

function Logs({ page, site, from }: Where & { readonly page: ClimatePage }): JSX.Element {
  return (
    <>
      <ListTable
        caption="Logger files"
        heads={["File", "What it tells of", "From", "To", { word: "Readings", number: true }, "No gap up to"]}
      >
        {page.logs.map(({ log, from: first, to, readings, gap }) => (
          <tr id={anchor("climate log", log.id)}>
            <th scope="row" class="id">
              {log.id}
            </th>
            <td>{log.title === log.id ? "" : log.title}</td>
            <td class="day">{first}</td>
            <td class="day">{to}</td>
            <td class="number">{readings}</td>
            <td>{gap}</td>
          </tr>
        ))}
      </ListTable>
      {page.logs
        .filter(({ log }) => log.body.length > 0)
        .map(({ log }) => (
          <div class="climate__log">
            <h3>{log.id}</h3>
            {log.body.map((passage) => (
              <Prose site={site} html={site.prose(passage, from)} />
            ))}
          </div>
        ))}
    </>
  );
}
