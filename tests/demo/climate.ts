/** Writes the logger files of the demonstration record: `npm run demo:climate`. All of it is invented, and always the same. */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { glueUps } from "./glue-ups.ts";
import { between, randomOf, type Random } from "./ink/random.ts";

const folder = fileURLToPath(new URL("../../content/climate/", import.meta.url));
const HOUR = 3600;
const at = (text: string): number => Date.parse(`${text}Z`) / 1000;

interface Hour {
  readonly time: number;
  readonly temperature: number;
  readonly humidity: number;
}

/** Something that wanders about nought and remembers where it was, hour by hour. */
function wandering(random: Random, spread: number, memory: number): () => number {
  let value = 0;
  return () =>
    (value =
      memory * value +
      spread * Math.sqrt(1 - memory ** 2) * (between(random, -1, 1) + between(random, -1, 1) + between(random, -1, 1)));
}

const DAYS_OFF = [at("2025-12-06T18:00"), at("2026-01-17T09:00")] as const;

/** What the heater keeps the store at: work by day, a little less by night, and no frost while the tools are down. */
function thermostat(time: number): number {
  if (time > DAYS_OFF[0] && time < DAYS_OFF[1]) return 8;
  const hour = (time / HOUR) % 24;
  return hour >= 6 && hour < 21 ? 17.2 : 16.4;
}

function outside(time: number, weather: number): number {
  const day = time / 86_400;
  return (
    10.8 -
    7 * Math.cos((2 * Math.PI * (day - 20)) / 365.25) +
    3.2 * Math.cos((2 * Math.PI * (time / HOUR - 15)) / 24) +
    weather
  );
}

/** How much of the difference to what was noted at a glue-up still shows so many hours before or after it. */
function pull(hours: number): number {
  if (hours < -12) return 0;
  if (hours < 0) return 1 + hours / 12;
  return hours < 6 ? 1 : Math.exp(-(hours - 6) / 50);
}

/** The store through all hours, as it was at each glue-up by what was noted then. */
function store(from: number, to: number): Hour[] {
  const weather = wandering(randomOf("weather"), 1.5, 0.985);
  const damp = wandering(randomOf("damp"), 2.2, 0.97);
  const flicker = randomOf("flicker");
  let inside = 8;
  const plain: Hour[] = [];
  for (let time = from - 240 * HOUR; time <= to; time += HOUR) {
    inside += (outside(time, weather()) + 3.2 - inside) / 20;
    const temperature = Math.max(inside, thermostat(time) + between(flicker, -0.3, 0.3));
    plain.push({
      time,
      temperature,
      humidity: 55 + 4 * Math.cos((2 * Math.PI * (time / 86_400 - 270)) / 365.25) + damp(),
    });
  }
  return plain.filter(({ time }) => time >= from).map((hour) => drawn(hour, plain));
}

function drawn({ time, temperature, humidity }: Hour, plain: readonly Hour[]): Hour {
  let [warmth, damp, weight] = [0, 0, 0];
  for (const [when, noted, moist] of glueUps) {
    const share = pull((time - at(when)) / HOUR);
    const then = share > 0.001 ? plain[Math.round((at(when) - (plain[0]?.time ?? 0)) / HOUR)] : undefined;
    if (then === undefined) continue;
    warmth += share * share * (noted - then.temperature);
    damp += share * share * ((moist ?? then.humidity) - then.humidity);
    weight += share;
  }
  const by = (sum: number): number => (weight > 0 ? sum / weight : 0);
  const least = thermostat(time) - 0.5;
  return {
    time,
    temperature: Math.max(least, temperature + by(warmth)),
    humidity: Math.min(78, Math.max(34, humidity + by(damp))),
  };
}

const two = (figure: number): string => String(figure).padStart(2, "0");

/** Summer time in London: from one in the morning of the last Sunday of March to that of October, UTC. */
function isSummer(time: number): boolean {
  const year = new Date(time * 1000).getUTCFullYear();
  const change = (month: number): number => {
    const last = Date.UTC(year, month + 1, 0) / 1000;
    return last - new Date(last * 1000).getUTCDay() * 86_400 + HOUR;
  };
  return time >= change(2) && time < change(9);
}

function onTheWall(time: number): string {
  const wall = new Date((time + (isSummer(time) ? HOUR : 0)) * 1000);
  return `${two(wall.getUTCDate())}/${two(wall.getUTCMonth() + 1)}/${wall.getUTCFullYear()} ${two(wall.getUTCHours())}:00`;
}

const UNPLUGGED = [at("2026-03-30T05:00"), at("2026-03-30T17:00")] as const;

const hours = store(at("2025-02-22T09:00"), at("2026-11-19T09:00"));
const first = hours.filter(({ time }) => time <= at("2025-12-20T03:00"));
const second = hours.filter(
  ({ time }) => time >= at("2026-01-24T11:00") && !(time > UNPLUGGED[0] && time < UNPLUGGED[1]),
);

mkdirSync(folder, { recursive: true });
writeFileSync(
  `${folder}bench-2025.csv`,
  [
    "Bench logger",
    "Interval 1 h",
    "",
    "Time (UTC),Temperature (°C)",
    ...first.map(
      ({ time, temperature }) =>
        `${new Date(time * 1000).toISOString().slice(0, 16).replace("T", " ")},${temperature.toFixed(1)}`,
    ),
    "",
  ].join("\n"),
);
writeFileSync(
  `${folder}bench-2026.csv`,
  [
    "Logged at;Temp (°C);RH (%)",
    ...second.map(
      ({ time, temperature, humidity }) => `${onTheWall(time)};${temperature.toFixed(1)};${humidity.toFixed(0)}`,
    ),
    "",
  ].join("\n"),
);
