/** Own pages, layouts and sheets: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const OWN = {
  "own-page": {
    title: "An own page or layout that cannot be made",
    happened: "A page in `pages/`, a layout in `layouts/` or code that they import stopped with an error.",
    why: "A site without it would have a gap, or an earlier page in its place.",
    mend: "Mend it at the place that is named; pages are templates of Eleventy, and are given `edition`.",
    example: "A page in Liquid with a filter that there is not, `{{ edition.day | dayname }}`.",
  },
  "own-title": {
    title: "An own page without a title",
    happened: "Nothing says what the page is called.",
    why: "The title stands in the browser, in the way to the page and at its head.",
    mend: "Write `title:` in its front matter, or export it in the data of an .11ty.js page.",
    example: "A page in `pages/` without front matter.",
  },
  "own-place": {
    title: "An own page at a place that is taken, or is none",
    happened:
      "Its `permalink` leads out of the site, to a page that the program makes, to another own page, or to a kind of file that no own page may be.",
    why: "A page of the record would be lost behind it, or a file would be no page.",
    mend: "Give it another name or `permalink`, which ends in .html, .json, .txt or .csv.",
    example: "A page `pages/hours.md`, which would take the place of the hours.",
  },
  "own-link": {
    title: "An own page with a link that leads nowhere",
    happened: "The edition has no page or file there; another edition may have one.",
    why: "Readers would end at nothing, and a link to what an edition withholds would name it.",
    mend: "Mend the link, or write it only where `edition` has what it leads to.",
    example: "A page with a link to /batch/B-9.html, where no batch has that id.",
  },
  "own-policy": {
    title: "An own page with what no page of a site may have",
    happened: "It has a script, a style within the page, a form, a frame, or asks another host for something.",
    why: "Every page states that it does none of this, so browsers would leave it out, and pages open from a disk.",
    mend: "Leave it out; styles go into style.css, pictures are those of the record.",
    example: 'A page with `<p style="color:red">`.',
  },
  "own-sheet": {
    title: "An own sheet that cannot be taken",
    happened: "The sheet style.css cannot be read as CSS, or asks for another file.",
    why: "A browser would leave a part of it out without a word, and pages ask no other host for anything.",
    mend: "Mend it at the place that is named.",
    example: "A style.css that begins with `@import`.",
  },
  "own-layout": {
    title: "An own layout of a page that has none",
    happened: "A layout has the name of a page of the evidence, or of one that says how verdicts are reached.",
    why: "What the evidence says must not be laid out into another meaning.",
    mend: "Give it another name.",
    example: "A layout `layouts/batch.liquid`.",
  },
  "own-audience": {
    title: "An own page for nobody that is known",
    happened:
      "`for:` of an own page names no edition or is computed, or what it came to has a passage marked with `:::`, or `for:` in its text, from wherever it was taken in.",
    why: "Something that is not for all would be shown to all.",
    mend: "Write `for: inspector` or `for: archive` for the whole page, in its front matter or in data of its folder, and put what is for fewer readers on one of its own.",
    example: "A page with `for: inspectors`.",
  },
} as const satisfies Explained;
