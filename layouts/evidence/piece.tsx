import type { JSX } from "preact";
import type { PieceFile } from "../../src/evidence/types.ts";
import { anchor } from "../../src/pages/address.ts";
import { brokeWords, pieceFacts, piecePhoto } from "../../src/pages/evidence/piece-facts.ts";
import { PIECE_MEANS } from "../../src/pages/evidence/verdict-words.ts";
import type { Shown } from "../../src/editions/shown.ts";
import { toldFinding } from "../../src/words/findings/told.ts";
import type { Ref } from "../../src/facts/types.ts";
import { Findings } from "../parts/findings.tsx";
import { To } from "../shell/link.tsx";
import { Mark } from "../parts/mark.tsx";
import { Photo } from "../parts/picture.tsx";
import { Facts, Id, ListTable, None, type Where } from "./parts.tsx";

/** Everything on one test piece: how it broke, its shape, what that shape could show, its verdict and why. */
export function Piece({ file, site, from }: Where & { readonly file: PieceFile }): JSX.Element {
  const { piece, verdict, findings } = file;
  const photo = piecePhoto(site.shown, file);
  const batch = site.shown.evidence.batches.get(piece.batch)?.batch;
  const about: Ref[] = [
    { kind: "piece", id: piece.id },
    { kind: "batch", id: piece.batch },
    ...[batch?.entry, file.test?.entry].flatMap((id): Ref[] => (id === undefined ? [] : [{ kind: "entry", id }])),
  ];
  return (
    <article
      class={photo === undefined ? "piece piece--bare" : "piece"}
      id={anchor("piece", piece.id)}
      aria-label={`Test piece ${piece.id}`}
    >
      <header class="piece__head">
        <h3 class="id">{piece.id}</h3>
        <Mark of={verdict} />
        <p class="piece__because">{whyPiece(site.shown, file)}</p>
      </header>
      <div class="piece__body">
        <div>
          <MadeBy file={file} site={site} from={from} />
          <Facts rows={pieceFacts(site.shown, file)} />
        </div>
        {photo === undefined ? null : (
          <Photo site={site} from={from} photo={photo} sizes="(min-width: 60rem) 18rem, 100vw" class="piece__photo" />
        )}
      </div>
      <details class="piece__why">
        <summary>Every check on this piece</summary>
        <Findings
          site={site}
          from={from}
          findings={findings.map((one) => toldFinding(site.shown.say, one))}
          about={about}
        />
      </details>
    </article>
  );
}

/** Its procedure, its wood and its trial. */
function MadeBy({ file: { piece }, site, from }: Where & { readonly file: PieceFile }): JSX.Element {
  return (
    <p class="small quiet">
      <ProcedureAndLot piece={piece} site={site} from={from} />
      {piece.trial === undefined ? null : (
        <>
          , for the trial <Id site={site} from={from} kind="trial" id={piece.trial} />
          {piece.preparation === undefined ? "" : `, prepared as ${piece.preparation}`}
        </>
      )}
    </p>
  );
}

/** Pieces in a table, for pages on joints, lots and trials. */
export function PieceTable({
  pieces,
  caption,
  site,
  from,
}: Where & { readonly pieces: readonly PieceFile[]; readonly caption: string }): JSX.Element {
  if (pieces.length === 0) return <None>No test pieces.</None>;
  return (
    <ListTable caption={caption} heads={["Piece", "Broke", "Verdict", "Why"]}>
      {pieces.map((file) => (
        <tr>
          <td>
            <Id site={site} from={from} kind="piece" id={file.piece.id} />
          </td>
          <td>{brokeWords(file)}</td>
          <td>
            <Mark of={file.verdict} />
          </td>
          <td>{whyPiece(site.shown, file)}</td>
        </tr>
      ))}
    </ListTable>
  );
}

/** The one sentence that made the verdict, or what the verdict means. */
export function whyPiece({ say }: Shown, { verdict, findings }: PieceFile): string {
  const reason = findings.find(
    ({ severity }) => severity === "rejects" || severity === "unproven" || severity === "waits",
  );
  return reason === undefined ? PIECE_MEANS[verdict] : say(reason);
}

/** By which procedure it was made, and of what lot where that is noted. */
export function ProcedureAndLot({ piece, site, from }: Where & Pick<PieceFile, "piece">): JSX.Element {
  return (
    <>
      <To site={site} from={from} to={{ kind: "procedure", id: piece.procedure }}>
        {site.shown.record.procedures.get(piece.procedure)?.title ?? piece.procedure}
      </To>
      {piece.lot === undefined ? null : (
        <>
          , of lot <Id site={site} from={from} kind="lot" id={piece.lot} />
        </>
      )}
    </>
  );
}
