/** Sums of money, `84.50 EUR`: an amount and the code of its currency (ISO 4217). */
import { onlyYouKnow, type Reading, shown, writes } from "../reading.ts";
import type { Money } from "../values.ts";

const MONEY = /^(?:(\d{1,12})(?:\.(\d{1,2}))?)\s*([A-Z]{3})$/;
const TURNED = /^([A-Za-z]{3})\s*(\d{1,12}(?:\.\d{1,2})?)$/;

export function readMoney(typed: string): Reading<Money> {
  const text = typed.normalize("NFC").trim();
  const [, whole, part = "", currency = ""] = MONEY.exec(text) ?? [];
  if (whole !== undefined && CURRENCIES.has(currency))
    return { value: { typed, hundredths: Number(whole) * 100 + Number(part.padEnd(2, "0")), currency } };
  return {
    fault: {
      code: "no-money",
      message: whole === undefined ? "this is not a sum of money" : "there is no currency with this code",
      expected: "an amount and the code of its currency, such as 84.50 EUR",
      found: shown(typed),
      ...mendFor(text),
    },
  };
}

const CURRENCIES: ReadonlySet<string> = new Set(Intl.supportedValuesOf("currency"));

function mendFor(text: string) {
  const point = text.replace(/(\d),(\d{1,2})(?!\d)/, "$1.$2");
  const [, code, amount] = TURNED.exec(point) ?? [];
  const better = code === undefined ? point.toUpperCase() : `${amount} ${code.toUpperCase()}`;
  const [, , , currency = ""] = MONEY.exec(better) ?? [];
  return better !== text && CURRENCIES.has(currency)
    ? writes(better)
    : onlyYouKnow("give the amount with a point, and the three letters of the currency");
}
