/**
 * How charts look on paper: the same as on a printed page, without what only a browser knows. No colour is needed to
 * read them.
 */
const INK = "#000";
const SOFT = "#3c3c3c";
const RULE = "#b5b5b5";
const STRONG = "#666";
const ACCENT = "#6d1c30";
const SPRUCE = "#d9d0bd";

export const DRAWN_LOOK = [
  `text{font-family:"Libertinus Serif";font-size:14px;fill:${SOFT}}`,
  `.axes .year{font-weight:bold;fill:${INK}}`,
  `.axis{stroke:${STRONG};stroke-width:1;fill:none}`,
  `.grid{stroke:${RULE};stroke-width:0.7;fill:none}`,
  `.grid--year{stroke:${STRONG};stroke-dasharray:1 3}`,
  `.tick{stroke:${STRONG};stroke-width:1;fill:none}`,
  `.level path{stroke:${SOFT};stroke-width:1.2;fill:none}`,
  `.level--limit path{stroke:${ACCENT};stroke-dasharray:7 4}`,
  `.individuals__line{fill:none;stroke:${STRONG};stroke-width:1.2}`,
  `.individuals__point{fill:${INK}}`,
  `.individuals__out path{fill:#fff;stroke:${ACCENT};stroke-width:2.2}`,
  `.individuals__out text{fill:${INK};font-weight:bold}`,
  `.climate__band{fill:${SPRUCE};stroke:${SOFT};stroke-width:0.4}`,
  `.climate__hatch{stroke:${STRONG};stroke-width:1.6}`,
  `.climate__gap{stroke:${STRONG};stroke-width:0.6}`,
  `.climate__mark{fill:${ACCENT};stroke:#fff;stroke-width:1.2}`,
  `.climate__mark--open{fill:#fff;stroke:${ACCENT};stroke-width:1.6}`,
  `.gauge__axis{stroke:${STRONG};stroke-width:1;fill:none}`,
  `.gauge__band{fill:${SPRUCE}}`,
  `.gauge__nominal{stroke:${INK};stroke-width:1.2;stroke-dasharray:2 2;fill:none}`,
  `.gauge__doubt{stroke:${INK};stroke-width:1.6;fill:none}`,
  `.gauge__found{fill:${ACCENT}}`,
  `.gauge__value{font-weight:bold;fill:${INK}}`,
].join("");
