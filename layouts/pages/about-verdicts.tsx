import type { JSX } from "preact";
import { Mark } from "../parts/mark.tsx";
import type { Marked } from "../parts/mark.tsx";

interface Said {
  readonly of: Marked;
  readonly says: string;
}

const PIECES: readonly Said[] = [
  {
    of: "pass",
    says: "broke in the wood, after its least cure, in a shape in which a weak glue line would have shown",
  },
  {
    of: "fail",
    says: "broke in the glue line, or with less wood failure than the procedure asks: whatever its shape and cure",
  },
  {
    of: "inconclusive",
    says: "broke in the wood, but in a shape or at a load in which it could hardly have broken elsewhere, or without a percentage that the procedure asks for",
  },
  { of: "too early", says: "broken before the record shows the least cure: proves nothing either way" },
  { of: "not broken", says: "still to be broken" },
];

const BATCHES: readonly Said[] = [
  {
    of: "shown",
    says: "every limit that decides was kept by what the record has, and as many test pieces passed as were asked for",
  },
  {
    of: "rejected",
    says: "the record shows that a limit was broken, a test piece failed, or the builder does not trust it",
  },
  { of: "pending", says: "what is still to come, pieces not yet broken, may settle it" },
  { of: "not shown", says: "the record cannot show that a limit was kept, and waiting will not help" },
];

const JOINTS: readonly Said[] = [
  { of: "shown", says: "every batch in it is shown" },
  { of: "quarantined", says: "holds a rejected batch or a recalled lot, until it is glued anew" },
  { of: "opened", says: "the glue was taken out; nothing has been glued since" },
  { of: "not glued", says: "not glued yet" },
];

const POINTS: readonly Said[] = [
  {
    of: "passed",
    says: "an inspector who has no hours on it has looked and signed; nothing was open then, nothing is now, and nothing has changed since",
  },
  {
    of: "signed with things open",
    says: "signed, but something was open when it was signed, or is open now; it is not passed until it is signed again",
  },
  {
    of: "reopened",
    says: "signed with nothing open, but in a later entry one of its joints was glued, opened, recalled or rejected, a test piece failed, a departure or an open item before it was noted, a measure was out, or any of these was amended",
  },
  { of: "ready", says: "nothing is open that this record looks at: every earlier hold point within is passed" },
  { of: "blocked", says: "something is wrong and has to be put right first" },
  { of: "ahead", says: "nothing is wrong; some of the work is still to be done" },
];

/** What the words mean and the order in which they are reached. */
export function AboutVerdicts(): JSX.Element {
  return (
    <section class="section" id="verdicts">
      <h2>How verdicts are reached</h2>
      <div class="prose">
        <p>
          A limit that the record shows to be broken rejects. One that the record cannot show leaves a batch not shown.
          What is still to come leaves it pending. Only where everything was checked and held is a batch shown; the
          worst finding decides. Nothing is guessed: what was not written down counts as not known.
        </p>
        <p>
          A test piece with no hour noted is taken to have been broken at the first moment of its day, and a batch with
          no hour of closing to have been closed at the last: the record never claims more cure than it shows. Each mark
          below is the section through a joint.
        </p>
      </div>
      <div class="verdicts">
        <Group title="A test piece" all={PIECES} />
        <Group title="A batch" all={BATCHES} />
        <Group
          title="A joint"
          all={JOINTS}
          after="Otherwise a joint is as good as the worst of its batches: pending or not shown."
        />
        <Group title="A hold point" all={POINTS} />
      </div>
      <div class="prose">
        <p>
          Three pieces of three that pass do not prove much by count alone: with 95 % confidence no more than that at
          least 37 % of such pieces would. They are one witness beside the ratio, the climate, the lots and the hands
          that did the work.
        </p>
      </div>
    </section>
  );
}

function Group({
  title,
  all,
  after,
}: {
  readonly title: string;
  readonly all: readonly Said[];
  readonly after?: string;
}): JSX.Element {
  return (
    <section>
      <h3>{title}</h3>
      <dl class="marks">
        {all.map(({ of, says }) => (
          <div>
            <dt>
              <Mark of={of} />
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      {after === undefined ? null : <p class="small quiet">{after}</p>}
    </section>
  );
}
