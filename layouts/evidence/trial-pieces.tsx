import type { JSX } from "preact";
import type { PieceFile } from "../../src/evidence/types.ts";
import { anchor } from "../../src/pages/address.ts";
import { piecePhoto } from "../../src/pages/evidence/piece-facts.ts";
import { piecesTogether } from "../../src/pages/evidence/pieces-together.ts";
import type { Ref } from "../../src/facts/types.ts";
import { groupBy } from "../../src/reckoning/hours/hours.ts";
import { Findings } from "../parts/findings.tsx";
import { Mark } from "../parts/mark.tsx";
import { Photo } from "../parts/picture.tsx";
import { Facts, Id, ListTable, type Where } from "./parts.tsx";
import { ProcedureAndLot, whyPiece } from "./piece.tsx";

/** Words so few that a line is not broken within them. */
const SHORT = 10;

/** Pieces of a trial are many and much alike: for each procedure and lot one table, and each check once. */
export function TrialPieces({
  pieces,
  batch,
  site,
  from,
}: Where & { readonly pieces: readonly PieceFile[]; readonly batch: string }): JSX.Element {
  const alike = groupBy(pieces, ({ piece: { procedure, lot } }) => `${procedure} ${lot ?? ""}`);
  return (
    <>
      {[...alike.values()].map((group) => (
        <Alike pieces={group} batch={batch} site={site} from={from} />
      ))}
    </>
  );
}

function Alike({
  pieces,
  batch,
  site,
  from,
}: Where & { readonly pieces: readonly PieceFile[]; readonly batch: string }): JSX.Element | null {
  const [first] = pieces;
  if (first === undefined) return null;
  const { shared, differing, rows, findings } = piecesTogether(site.shown, pieces);
  return (
    <>
      <p>
        <ProcedureAndLot piece={first.piece} site={site} from={from} />.{" "}
        {shared.length === 0 ? "" : pieces.length === 1 ? "Noted of it:" : "The same of all of them:"}
      </p>
      <Facts rows={shared} />
      <ListTable
        caption={`Pieces of batch ${batch} made for a trial`}
        heads={["Piece", "Trial", ...differing, "Verdict", "Why"]}
      >
        {rows.map(({ file, notedOf }) => (
          <tr id={anchor("piece", file.piece.id)}>
            <th scope="row" class="id">
              {file.piece.id}
            </th>
            <td>
              <Id site={site} from={from} kind="trial" id={file.piece.trial ?? ""} />
              {file.piece.preparation === undefined ? "" : `, ${file.piece.preparation}`}
            </td>
            {differing.map((word) => (
              <td class={(notedOf.get(word) ?? "").length <= SHORT ? "id" : undefined}>{notedOf.get(word) ?? ""}</td>
            ))}
            <td>
              <Mark of={file.verdict} />
            </td>
            <td class="because">{whyPiece(site.shown, file)}</td>
          </tr>
        ))}
      </ListTable>
      <Pictures pieces={pieces} site={site} from={from} />
      <details class="piece__why">
        <summary>Every check on these pieces</summary>
        <Findings site={site} from={from} findings={findings} about={aboutOf(pieces, site)} />
      </details>
    </>
  );
}

/** What stands on the page around them anyhow. */
function aboutOf(pieces: readonly PieceFile[], site: Where["site"]): Ref[] {
  return pieces.flatMap(({ piece, test }): Ref[] => [
    { kind: "piece", id: piece.id },
    { kind: "batch", id: piece.batch },
    ...[site.shown.evidence.batches.get(piece.batch)?.batch.entry, test?.entry].flatMap((id): Ref[] =>
      id === undefined ? [] : [{ kind: "entry", id }],
    ),
  ]);
}

function Pictures({ pieces, site, from }: Where & { readonly pieces: readonly PieceFile[] }): JSX.Element | null {
  const photos = new Map(
    pieces.flatMap((file) => piecePhoto(site.shown, file) ?? []).map((photo) => [photo.file, photo]),
  );
  if (photos.size === 0) return null;
  return (
    <div class="plates">
      {[...photos.values()].map((photo) => (
        <Photo site={site} from={from} photo={photo} sizes="(min-width: 60rem) 18rem, 100vw" />
      ))}
    </div>
  );
}
