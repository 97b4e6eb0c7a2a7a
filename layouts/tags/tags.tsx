/** Labels for the workshop: a code that leads to the page of a thing, and its id in letters. */
import type { JSX } from "preact";
import { addressOf, relative } from "../../src/pages/address.ts";
import type { PageFile, Site } from "../../src/editions/shown.ts";
import type { Ref } from "../../src/facts/types.ts";
import { addressOfSite, wholeAddress } from "../../src/pages/story/followed.ts";
import { html, Page } from "../shell/page.tsx";
import { Code } from "./code.tsx";
import { sizeWords, TAG_SHEETS, tagRules, type TagSheet } from "./sizes.ts";

const TAGS = "tags.html";

interface Tag {
  /** What it is, such as `Joint`. */
  readonly kind: string;
  readonly id: string;
  readonly title: string;
  /** Of its page, whole. */
  readonly address: string;
}

interface Group {
  readonly title: string;
  readonly tags: readonly Tag[];
}

/** One page that leads on, and one for each size of label; without the site's address only the first, which says why. */
export function tagsPages(site: Site): PageFile[] {
  const address = addressOfSite(site.shown);
  const choice = { path: TAGS, make: () => html(<TagsPage site={site} address={address} />) };
  if (address === undefined) return [choice];
  return [
    choice,
    ...TAG_SHEETS.map((sheet) => ({
      path: pathOf(sheet),
      make: () => html(<SheetPage site={site} sheet={sheet} groups={groupsOf(site, address)} />),
    })),
  ];
}

const pathOf = ({ name }: TagSheet): string => `tags/${name}.html`;

function groupsOf({ shown }: Site, address: string): Group[] {
  const { assemblies, lots } = shown.record;
  const tag = (kind: string, ref: Ref, title: string): Tag => ({
    kind,
    id: ref.id,
    title,
    address: wholeAddress(address, addressOf(ref) ?? ""),
  });
  return [
    {
      title: "Assemblies",
      tags: [...assemblies.values()].map(({ id, title }) => tag("Assembly", { kind: "assembly", id }, title)),
    },
    {
      title: "Joints",
      tags: [...shown.evidence.joints.values()].map(({ joint: { id, title } }) =>
        tag("Joint", { kind: "joint", id }, title),
      ),
    },
    { title: "Lots", tags: [...lots.values()].map(({ id, title }) => tag("Lot", { kind: "lot", id }, title)) },
  ].filter(({ tags }) => tags.length > 0);
}

interface TagsProps {
  readonly site: Site;
  readonly address: string | undefined;
}

function TagsPage({ site, address }: TagsProps): JSX.Element {
  return (
    <Page
      site={site}
      path={TAGS}
      kind="tags"
      title="Tags for the workshop"
      description="Labels to print: a code on each leads to the page of a part, a joint or a lot."
    >
      <div class="title">
        <p class="title__place">
          <a href="assemblies.html">Assemblies</a>
        </p>
        <h1>Tags for the workshop</h1>
        <p class="title__lead">
          Labels for parts, for boxes in which the pieces of a joint lie, and for lots: a phone that sees the code opens
          its page.
        </p>
      </div>
      {address === undefined ? <WithoutAddress site={site} /> : <Choice />}
    </Page>
  );
}

function WithoutAddress({ site }: Pick<TagsProps, "site">): JSX.Element {
  return site.shown.edition === "public" ? (
    <p>
      There are no codes here: a code holds the whole address of a page, and this record does not say where its site
      stands (<code>address:</code> in <code>aircraft.md</code>).
    </p>
  ) : (
    <p>
      There are no codes in this edition: a code holds the whole address of a page, and only the public edition has one.
    </p>
  );
}

function Choice(): JSX.Element {
  return (
    <>
      <p>
        Choose the size of your labels, on sheets of A4. Print at actual size, without margins of the printer’s own.
      </p>
      <ul class="tags__sizes">
        {TAG_SHEETS.map((sheet) => (
          <li>
            <a href={pathOf(sheet)}>{sizeWords(sheet)}</a>
          </li>
        ))}
      </ul>
    </>
  );
}

interface SheetProps {
  readonly site: Site;
  readonly sheet: TagSheet;
  readonly groups: readonly Group[];
}

/** Each group begins a sheet, since lots are labelled on another day than parts. */
function SheetPage({ site, sheet, groups }: SheetProps): JSX.Element {
  const path = pathOf(sheet);
  return (
    <Page site={site} path={path} kind="tags" title={`Tags, ${sizeWords(sheet)}`} styles={tagRules(sheet)}>
      <div class="title tags__words">
        <p class="title__place">
          <a href={relative(path, TAGS)}>Other sizes</a>
        </p>
        <h1>Tags, {sizeWords(sheet)}</h1>
      </div>
      {groups.map(({ title, tags }) => (
        <section class="tags__group" aria-label={title}>
          <h2 class="tags__words">{title}</h2>
          {sheetsOf(tags, sheet).map((ofSheet) => (
            <div class="tags__sheet">
              {ofSheet.map((tag) => (
                <TagLabel tag={tag} name={site.shown.record.aircraft.name} />
              ))}
            </div>
          ))}
        </section>
      ))}
    </Page>
  );
}

function sheetsOf(tags: readonly Tag[], { across, down }: TagSheet): (readonly Tag[])[] {
  const most = across * down;
  return Array.from({ length: Math.ceil(tags.length / most) }, (_, at) => tags.slice(at * most, (at + 1) * most));
}

function TagLabel({ tag: { kind, id, title, address }, name }: { readonly tag: Tag; readonly name: string }) {
  return (
    <div class="tag">
      <Code text={address} says={`Code that leads to ${address}`} />
      <p class="tag__words">
        <span class="tag__kind">{kind}</span> <strong class="tag__id">{id}</strong>{" "}
        {title === id ? null : <span class="tag__title">{title}</span>} <span class="tag__name">{name}</span>
      </p>
    </div>
  );
}
