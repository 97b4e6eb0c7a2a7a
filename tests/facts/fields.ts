/** Every field of every fact, by the decisions on who may see it: a field without a decision does not compile. */
import { recordShown } from "../../src/editions/redacted-record.ts";

/** Decisions by field, of which some are made field by field in turn. */
interface Fields {
  readonly [key: string]: unknown;
}

const OF_A_RECORD: Fields = { ...recordShown };

const fieldsIn = (decision: unknown): Fields | undefined =>
  typeof decision === "function" && "fields" in decision ? (decision.fields as Fields) : undefined;

/** Paths such as `entries.batches.resin.lot`. */
export function fieldPaths(fields = OF_A_RECORD, above = ""): string[] {
  return Object.entries(fields).flatMap(([key, decision]) => {
    const inner = fieldsIn(decision);
    return inner ? fieldPaths(inner, `${above}${key}.`) : [`${above}${key}`];
  });
}

/** Each value that a record holds in a field, with the field's path; nothing and empty lists are no values. */
export function valuesIn(record: object): (readonly [path: string, value: unknown])[] {
  const within = (fact: unknown, fields: Fields, above: string): (readonly [string, unknown])[] =>
    [fact].flatMap(parts).flatMap((one) =>
      Object.entries(one as object).flatMap(([key, value]) => {
        const inner = fieldsIn(fields[key]);
        if (inner) return within(value, inner, `${above}${key}.`);
        return isEmpty(value) ? [] : [[`${above}${key}`, value] as const];
      }),
    );
  return within(record, OF_A_RECORD, "");
}

const parts = (value: unknown): unknown[] => {
  if (value === undefined) return [];
  if (Array.isArray(value)) return value;
  return value instanceof Map ? [...(value as Map<string, unknown>).values()] : [value];
};

const isEmpty = (value: unknown): boolean => value === undefined || (Array.isArray(value) && value.length === 0);

/** A copy of a record that tells `read` the path of each field that is read. Where a fact is copied as a whole, nothing is told. */
export function watched<T extends object>(record: T, read: (path: string) => void): T {
  const copies = new Map<object, object>();
  const copy = (value: unknown, fields: Fields | undefined, path: string): unknown => {
    if (fields === undefined || typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) return value.map((item) => copy(item, fields, path));
    if (value instanceof Map) return new Map([...value].map(([id, item]) => [id, copy(item, fields, path)]));
    const known = copies.get(value);
    if (known) return known;
    const inner = Object.entries(value).map(([key, part]) => [
      key,
      copy(part, fieldsIn(fields[key]), `${path}${key}.`),
    ]);
    const made = watchedFact(Object.fromEntries(inner) as object, (key) => {
      if (key in fields && fieldsIn(fields[key]) === undefined) read(`${path}${key}`);
    });
    copies.set(value, made);
    return made;
  };
  return copy(record, OF_A_RECORD, "") as T;
}

/** Whoever asks for all keys takes a copy: what is read next, key by key, is that copy. */
function watchedFact(fact: object, read: (key: string) => void): object {
  let copied: readonly (string | symbol)[] = [];
  return new Proxy(fact, {
    ownKeys: (all) => {
      copied = Reflect.ownKeys(all);
      return [...copied];
    },
    get: (all, key) => {
      if (key === copied[0]) copied = copied.slice(1);
      else {
        copied = [];
        read(String(key));
      }
      return Reflect.get(all, key) as unknown;
    },
  });
}
