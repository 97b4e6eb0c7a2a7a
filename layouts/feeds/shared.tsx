/** What a page tells those who share it: the Open Graph protocol (ogp.me), and of an entry schema.org's words for one. Of the first page and of entries; nothing that they do not say. */
import type { JSX } from "preact";
import type { Site } from "../../src/editions/shown.ts";
import {
  addressOfSite,
  lastDayOf,
  type SharedPicture,
  sharedPicture,
  wholeAddress,
} from "../../src/pages/story/followed.ts";
import { relative } from "../../src/pages/address.ts";
import { pictureOf } from "../../src/pages/story/pictured.ts";
import type { Entry } from "../../src/facts/types.ts";
import { ATOM } from "./atom.tsx";
import { JSON_FEED } from "./json-feed.ts";

interface SharedProps {
  readonly site: Site;
  readonly path: string;
  readonly title: string;
  readonly description?: string | undefined;
  readonly entry?: Entry | undefined;
}

export function SharedHead({ site, path, title, description, entry }: SharedProps): JSX.Element | null {
  const address = addressOfSite(site.shown);
  if (address === undefined) return null;
  const { aircraft } = site.shown.record;
  if (entry === undefined && path !== "index.html") return <link rel="canonical" href={wholeAddress(address, path)} />;
  const here = wholeAddress(address, path);
  const picture = sharedPicture(
    site,
    address,
    entry === undefined ? aircraft.photo : (pictureOf(entry) ?? aircraft.photo),
  );
  return (
    <>
      <link rel="canonical" href={here} />
      <link rel="alternate" type="application/atom+xml" title={aircraft.name} href={relative(path, ATOM)} />
      <link rel="alternate" type="application/feed+json" title={aircraft.name} href={relative(path, JSON_FEED)} />
      <meta property="og:type" content={entry === undefined ? "website" : "article"} />
      <meta property="og:site_name" content={aircraft.name} />
      <meta property="og:title" content={title} />
      {description === undefined ? null : <meta property="og:description" content={description} />}
      <meta property="og:url" content={here} />
      {picture === undefined ? null : <PictureShared picture={picture} />}
      {entry === undefined ? null : <EntryData site={site} entry={entry} here={here} picture={picture} />}
    </>
  );
}

function PictureShared({ picture: { address, alt, width, height, type } }: { readonly picture: SharedPicture }) {
  return (
    <>
      <meta property="og:image" content={address} />
      <meta property="og:image:type" content={type} />
      <meta property="og:image:width" content={String(width)} />
      <meta property="og:image:height" content={String(height)} />
      <meta property="og:image:alt" content={alt} />
    </>
  );
}

interface DataProps {
  readonly site: Site;
  readonly entry: Entry;
  readonly here: string;
  readonly picture: SharedPicture | undefined;
}

function EntryData({ site: { shown }, entry, here, picture }: DataProps): JSX.Element {
  const data = {
    "@context": "https://schema.org",
    "@type": "BlogPosting",
    headline: entry.title,
    url: here,
    datePublished: entry.day,
    dateModified: lastDayOf(shown, entry),
    inLanguage: shown.record.aircraft.language ?? "en",
    ...(picture === undefined ? {} : { image: picture.address }),
  };
  // Within a script no text may end it.
  const text = JSON.stringify(data).replaceAll("<", "\\u003c");
  return <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: text }} />;
}
