/**
 * How papers are set, in Typst. All that a record says comes as data from `paper.json`, and is text there: nothing of
 * it is read as markup or run.
 */
import { BLOCKS } from "./template-blocks.ts";
import { TABLES } from "./template-tables.ts";

const PAGE = `
#let paper = json("paper.json")
#let ink2 = rgb("#454545")
#let accent = rgb("#6d1c30")
#let thin = 0.4pt + rgb("#9a9a9a")

#set document(title: paper.title, author: (), date: datetime(year: paper.date.at(0), month: paper.date.at(1), day: paper.date.at(2)))
#set text(font: ("Libertinus Serif", "DejaVu Sans Mono"), size: 8.4pt, lang: paper.language, hyphenate: false, number-width: "tabular")
#set par(leading: 0.48em, spacing: 0.52em, justify: false)
#set block(spacing: 0.52em)

// The parts that stand on a page, or go on there; and of the headings below them the first and the last.
#let running() = context {
  let at = here().page()
  let names(level) = {
    let all = query(heading.where(level: level))
    let on = all.filter(h => h.location().page() == at)
    let before = all.filter(h => h.location().page() < at)
    let starts = on.len() > 0 and on.first().location().position().y < 3.4cm
    (if before.len() > 0 and not starts { (before.last(),) } else { () }) + on
  }
  let parts = names(1)
  let below = names(2)
  if parts.len() > 0 {
    let first = parts.first().location()
    below = below.filter(h => h.location().page() > first.page() or (h.location().page() == first.page() and h.location().position().y >= first.position().y))
    let told = (parts.first(),) + (if parts.len() > 1 { (parts.last(),) } else { () })
    told.map(h => h.body).join([ – ])
    if below.len() > 0 and parts.len() == 1 {
      [ · ]
      below.first().body
      if below.len() > 1 [ – #below.last().body]
    }
  }
}

#set page(
  paper: "a4",
  margin: (top: 20mm, bottom: 15mm, x: 13mm),
  header: text(size: 7.6pt, fill: ink2, {
    grid(columns: (1fr, auto), column-gutter: 6mm, text(weight: "bold", paper.record), paper.edition)
    block(above: 0.5em, below: 0.45em, height: 1.3em, clip: true, text(bottom-edge: "descender", running()))
    line(length: 100%, stroke: thin)
  }),
  header-ascent: 2.5mm,
  footer: text(size: 7.6pt, fill: ink2, grid(
    columns: (1fr, 2fr, 1fr),
    align: (left, center, right),
    paper.day,
    paper.seal,
    context [Page #counter(page).display() of #counter(page).final().first()],
  )),
)

#set heading(numbering: none)
#show heading: it => block(sticky: true, above: 1.1em, below: 0.5em, text(weight: "bold", size: 9.6pt, it.body))
#show heading.where(level: 1): it => block(sticky: true, above: 1.7em, below: 0.7em, width: 100%, stroke: (bottom: 0.8pt), inset: (bottom: 3pt), text(size: 13pt, weight: "bold", it.body))
#show heading.where(level: 2): it => block(sticky: true, above: 1em, below: 0.5em, text(size: 10.2pt, weight: "bold", it.body))
#show outline.entry.where(level: 1): it => block(above: 0.55em, strong(it))
#show outline.entry.where(level: 2): it => block(above: 0.35em, it)
`;

const BODY = `
#[
  #set par(leading: 0.62em, spacing: 0.95em)
  #set block(spacing: 0.95em)
  #for block in paper.front { set-block(block) }
]
#pagebreak(weak: true)
#for block in paper.body { set-block(block) }
`;

export const TEMPLATE = PAGE + BLOCKS + TABLES + BODY;
