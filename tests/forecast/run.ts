/** `npm run forecasts [builders]`: prints the coverage of the 80 % band at each horizon. */
import { coverage } from "./coverage.ts";

const builders = Number(process.argv[2] ?? 200);
for (const { ahead, tried, held } of coverage(builders))
  console.log(
    `${ahead} weeks ahead: the band of 80 % held ${held} of ${tried} times, ${((100 * held) / tried).toFixed(1)} %`,
  );
