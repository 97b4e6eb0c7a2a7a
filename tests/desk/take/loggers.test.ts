import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readRecord } from "../../../src/record/read.ts";
import { command } from "../../cli/command.ts";
import { contentOf, scratchFolders, writeAll } from "../../publish/scratch.ts";
import { WORKSHOP } from "../workshop.ts";

const scratch = scratchFolders();

interface Shape {
  readonly name: string;
  readonly text: string | Buffer;
  /** The one answer, where the file leaves something open. */
  readonly answer?: string;
  readonly reads: readonly string[];
}

const TWO = ["2021-03-25T00:30Z 20 0.5", "2021-03-25T01:30Z 21.5 0.55"];
const WARM = ["2021-03-25T00:30Z 20 -", "2021-03-25T01:30Z 21.5 -"];

/** Exports in the shapes that are common; the moments are those of Lisbon's clock in winter, which is that of UTC. */
const SHAPES: readonly Shape[] = [
  {
    name: "date and time apart",
    text: "Date,Time,Temperature (°C),Humidity (%)\n2021-03-25,00:30,20.0,50\n2021-03-25,01:30,21.5,55\n",
    answer: "zone: local",
    reads: TWO,
  },
  {
    name: "half days, the month first and the year in two figures",
    text: 'Time,"Temp, °C","RH, %"\n03/25/21 12:30:00 AM,20,50\n03/25/21 01:30:00 AM,21.5,55\n',
    answer: "zone: local",
    reads: TWO,
  },
  {
    name: "newest first",
    text: "Timestamp,Temperature (°C),Humidity (%)\n2021-03-25 01:30,21.5,55\n2021-03-25 00:30,20,50\n",
    answer: "zone: UTC",
    reads: TWO,
  },
  {
    name: "seconds since 1970",
    text: "timestamp,temperature_c,humidity_%\n1616632200,20,50\n1616635800,21.5,55\n",
    reads: TWO,
  },
  {
    name: "one line a sensor and moment",
    text: [
      "Time,Sensor,Value",
      ...["2021-03-25 00:30", "2021-03-25 01:30"].flatMap((at, i) => [
        `${at},Temperature,${20 + 1.5 * i}`,
        `${at},Humidity,${50 + 5 * i}`,
      ]),
      "",
    ].join("\n"),
    answer: "zone: local; temperature: Temperature / Value / °C; humidity: Humidity / Value / %",
    reads: TWO,
  },
  {
    name: "two channels",
    text: "Time (UTC),Ch 1 (°C),Ch 2 (°C)\n2021-03-25 00:30,20,9\n2021-03-25 01:30,21.5,8\n",
    answer: "temperature: Ch 1 (°C)",
    reads: WARM,
  },
  {
    name: "degrees Fahrenheit",
    text: "Date-Time (UTC),Temp (°F),RH (%)\n2021-03-25 00:30,68,50\n2021-03-25 01:30,70.7,55\n",
    reads: TWO,
  },
  {
    name: "Windows-1252 with semicolons and decimal commas",
    text: Buffer.from(
      "Datum;Uhrzeit;Temperatur [°C];Luftfeuchte [%]\n25.03.2021;00:30;20,0;50,0\n25.03.2021;01:30;21,5;55,0\n",
      "latin1",
    ),
    answer: "zone: local",
    reads: TWO,
  },
  {
    name: "UTF-16 with tabs",
    text: Buffer.from(
      "\ufeffTime\tTemperature (°C)\tHumidity (%)\r\n2021-03-25 00:30\t20\t50\r\n2021-03-25 01:30\t21.5\t55\r\n",
      "utf16le",
    ),
    answer: "zone: local",
    reads: TWO,
  },
  {
    name: "a title before the header",
    text: "Shop logger, serial 12\nInterval: 1 h\n\nTime,Temperature (°C),Humidity (%)\n25/03/2021 00:30,20,50\n25/03/2021 01:30,21.5,55\n",
    answer: "zone: local",
    reads: TWO,
  },
];

function workshop(text: string | Buffer): { record: string; file: string } {
  const [record, given] = [scratch(), scratch()];
  writeAll(record, WORKSHOP);
  writeAll(given, { "Shop log (2).csv": text });
  return { record, file: join(given, "Shop log (2).csv") };
}

async function readingsIn(record: string): Promise<string[]> {
  const read = await readRecord(record);
  if ("problems" in read) return expect.fail(JSON.stringify(read.problems));
  const [log] = read.record.climate;
  const figure = (value = Number.NaN): string => (Number.isNaN(value) ? "-" : String(Number(value.toFixed(6))));
  return [...(log?.times ?? [])].map(
    (time, i) =>
      `${new Date(time * 1000).toISOString().slice(0, 16)}Z ${figure(log?.temperatures[i])} ${figure(log?.humidities[i])}`,
  );
}

describe("A logger's file", () => {
  it.each(SHAPES)(
    "with $name comes in with one question at most, and stays as it was",
    async ({ text, answer, reads }) => {
      const { record, file } = workshop(text);
      const asked: string[] = [];
      const asker = async () => ({
        ask: async ({ key, choices = [] }: { key: string; choices?: readonly string[] }) => {
          asked.push(key);
          const parts = (answer ?? "").split("; ");
          return choices.find((choice) => parts.every((part) => choice.includes(part)));
        },
      });
      const { code, err } = await command(["take", file, "--content", record], { asker });
      expect([code, err]).toEqual([0, ""]);
      expect(asked).toEqual(answer === undefined ? [] : ["logger"]);
      expect(readFileSync(join(record, "climate/shop-log.csv"))).toEqual(Buffer.from(text as string));
      expect(await readingsIn(record)).toEqual(reads);
    },
  );

  it.each(SHAPES.filter(({ answer }) => answer !== undefined))(
    "with $name is told whole where nobody can be asked: every way in which it can be read",
    async ({ text }) => {
      const { record, file } = workshop(text);
      const before = contentOf(record);
      const { code, err } = await command(["take", file, "--content", record]);
      expect(code).toBe(2);
      const choices = /--logger <words> {2}.*: (.*)\n/su.exec(err)?.[1] ?? "";
      expect(choices).not.toBe("");
      expect(contentOf(record)).toEqual(before);
    },
  );

  it("that was taken is there already, and its answer is kept beside it", async () => {
    const { record, file } = workshop(SHAPES[0]?.text ?? "");
    await command(["take", file, "--content", record, "--logger", "zone: local"]);
    expect(readFileSync(join(record, "climate/shop-log.md"), "utf8")).toContain("zone: local\n");
    const before = contentOf(record);
    expect(await command(["take", file, "--content", record])).toMatchObject({
      code: 0,
      out: `Is there already ${file}\n  climate/shop-log.csv\n`,
    });
    expect(contentOf(record)).toEqual(before);
  });

  it("in which day and month leave each other open is asked about, and neither is taken by itself", async () => {
    const { record, file } = workshop("Time (UTC),Temp (°C)\n03/04/2021 00:30,20\n03/04/2021 01:30,21\n");
    const { err } = await command(["take", file, "--content", record]);
    expect(err).toContain("time: D/M/YYYY H:mm, time: M/D/YYYY H:mm");
    await command(["take", file, "--content", record, "--logger", "time: M/D/YYYY H:mm"]);
    expect((await readingsIn(record))[0]).toBe("2021-03-04T00:30Z 20 -");
  });

  it("with a reading that none can be is left, and what is wrong is told", async () => {
    const { record, file } = workshop(
      "Time (UTC),Temp (°C)\n2021-03-04 00:30,20\n2021-03-04 01:30,999\n2021-03-04 02:30,20\n",
    );
    const { code, err } = await command(["take", file, "--content", record]);
    expect([code, err]).toEqual([1, expect.stringContaining("no workshop has such a temperature")]);
  });
});
