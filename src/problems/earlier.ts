/** Tables of earlier hours: what is told of each problem. */
import type { Explained } from "./explained.ts";

export const EARLIER = {
  "earlier-header": {
    title: "A header that does not say what is in each column",
    happened: "A column that must be there is not, two have one name, or nothing says what one holds.",
    why: "Hours taken from the wrong column would be counted.",
    mend: "Give the table a header, or say in a file beside it what its columns are called and which are passed over.",
    example: ["@ new hours/notebook.csv", "+ when,who,task,time", "+ 2025-02,builder,gluing,12:00"],
  },
  "earlier-cell": {
    title: "A row that lacks something, or has too much",
    happened:
      "A cell that each row must have is empty, a row has more cells than the header, or nothing says where it is from.",
    why: "Hours without a time, a person or a source are nobody's, and prove nothing.",
    mend: "Fill in what you know, with a month or a year where the day is forgotten, or take the row out.",
    example: ["@ new hours/notebook.csv", "+ span,who,task,time,source", "+ 2025-02,,gluing,12:00,Notebook 1"],
  },
  "earlier-aside": {
    title: "A line that was set aside and is another one now",
    happened: "A file beside a table sets a line aside by its number, and that line begins otherwise now, or is none.",
    why: "Another line would be left out of the sums in its place.",
    mend: "Say the number that the line has now, or count it again.",
    example: [
      "@ new hours/notebook.csv",
      "+ span,who,task,time,source",
      "+ 2025-02,builder,gluing,12:00,Notebook 1",
      "@ new hours/notebook.md",
      "+ ---",
      '+ set_aside: [{ line: 2, typed: "Sum", why: A sum }]',
      "+ ---",
    ],
  },
  "earlier-alone": {
    title: "Words about a table that is not there",
    happened: "A file in hours/ has no table of the same name beside it.",
    why: "What it says is of nothing, and the hours it tells of are missing.",
    mend: "Put the table beside it, under the same name.",
    example: ["@ new hours/notebook.md", "+ ---", "+ title: The old notebook", "+ ---"],
  },
  "visitor-worked": {
    title: "Work of a visitor",
    happened: "A row of earlier hours names a person whose role is `visitor`.",
    why: "A visitor's time is told apart and stands in no sum of hours.",
    mend: "Take the row out, or give that person another role.",
    example: [
      "@ aircraft.md",
      "-   - { id: looker",
      "+   - { id: guest, name: Ada Caller, public: Ada, role: visitor }\n  - { id: looker",
      "@ new hours/notebook.csv",
      "+ span,who,task,time,source",
      "+ 2025-02,guest,gluing,12:00,Notebook 1",
    ],
  },
} as const satisfies Explained;
