import { DoneNotice } from '@/app/_components/done-notice';
import { PageHeader } from '@/app/_components/page-header';
import { can } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { oddYieldWords, yieldRows } from '@/lib/documents';
import { type ShopSettings, capital } from '@/lib/forms';
import { PRIOR_ANIMALS } from '@/lib/learning';
import { formatOrderNumber } from '@/lib/orders';
import { shopSettings } from '@/lib/workflows/shop-settings';
import { type OddYieldOf, type SpeciesYield, readYields } from '@/lib/workflows/yields';
import { judgeAction, switchAction } from './actions';
import { SharePlot } from './share-plot';
import './yields.css';

export const metadata = { title: 'Yields' };

const DONE = {
  confirmed: 'Counted. The forecast learns from this animal now.',
  'left-out': 'Left out. The forecast does not learn from this animal.',
  on: 'Switched on. The forecast learns from your animals again.',
  off: 'Switched off. The forecast goes by the published figures.',
  anew: 'Begun anew. Only animals packed from now on count.',
  gone: 'That is not here any more. Nothing was changed.',
};

/** What the shop's own animals have taught the forecast, and what it does not learn from until somebody says so. */
export default async function YieldsPage({ searchParams }: PageProps<'/staff/yields'>) {
  const staff = await requireStaff('yields.read');
  const [{ species, doubted, judged }, shop, { done }] = await Promise.all([readYields(staff), shopSettings(), searchParams]);
  const mayJudge = can(staff, 'yields.judge');
  return (
    <main className="page wide" id="main">
      <PageHeader
        title="Yields"
        lede={`What your own packed animals say, beside what was published. The published figures count as ${PRIOR_ANIMALS} animals; the more of yours there are, the more yours decide.`}
      />
      <DoneNotice done={done} words={DONE} />
      {doubted.length > 0 && (
        <section className="section" aria-labelledby="doubted">
          <h2 id="doubted">Too odd to learn from</h2>
          <p className="quiet-text">A wrong unit, a lug of another animal, or really such an animal. They stay out until somebody says that they are right.</p>
          <OddAnimals animals={doubted} mayJudge={mayJudge} shop={shop} />
        </section>
      )}
      {species.length === 0 && <p>No animal has been weighed on the rail and packed yet. From the first one on, this page shows what it told.</p>}
      {species.map((one) => (
        <SpeciesSection key={one.speciesId} one={one} shop={shop} mayJudge={mayJudge} />
      ))}
      {judged.length > 0 && (
        <section className="section" aria-labelledby="judged">
          <h2 id="judged">Odd animals somebody has looked at</h2>
          <OddAnimals animals={judged} mayJudge={mayJudge} shop={shop} />
        </section>
      )}
    </main>
  );
}

type OddAnimalsProps = { readonly animals: readonly OddYieldOf[]; readonly mayJudge: boolean; readonly shop: ShopSettings };

function OddAnimals({ animals, mayJudge, shop }: OddAnimalsProps) {
  return (
    <ul className="stack">
      {animals.map(({ id, orderNumber, hunterName, animal, doubt, verdict, judgedBy }) => (
        <li className="panel stack tight" key={id}>
          <p>
            <a href={`/staff/orders/${orderNumber}`}>{formatOrderNumber(orderNumber)}</a>, {hunterName}, {animal}. {oddYieldWords(doubt, shop)}
          </p>
          {judgedBy !== null && (
            <p className="quiet-text">
              {verdict === 'confirmed' ? 'Counted' : 'Left out'}, says {judgedBy}.
            </p>
          )}
          {mayJudge && (
            <form action={judgeAction} className="row">
              <input type="hidden" name="id" value={id} />
              {verdict !== 'confirmed' && (
                <button className="button" name="verdict" value="confirmed">
                  It is right: count it<span className="visually-hidden">, {formatOrderNumber(orderNumber)}</span>
                </button>
              )}
              {verdict !== 'left-out' && (
                <button className="button plain" name="verdict" value="left-out">
                  Leave it out<span className="visually-hidden">, {formatOrderNumber(orderNumber)}</span>
                </button>
              )}
            </form>
          )}
        </li>
      ))}
    </ul>
  );
}

type SpeciesSectionProps = { readonly one: SpeciesYield; readonly shop: ShopSettings; readonly mayJudge: boolean };

function SpeciesSection({ one: { speciesId, name, learned, learning }, shop, mayJudge }: SpeciesSectionProps) {
  const animals = Math.max(...learned.shares.map(({ own }) => own.animals));
  const state = learning.isOn
    ? `The forecast learns from them${learning.since ? `, from ${new Intl.DateTimeFormat(shop.locale, { dateStyle: 'medium', timeZone: shop.timeZone }).format(learning.since)} on` : ''}.`
    : 'Switched off: the forecast goes by the published figures.';
  return (
    <section className="section" aria-labelledby={`yield-${speciesId}`}>
      <h2 id={`yield-${speciesId}`}>{capital(name)}</h2>
      <p>
        {animals === 0 ? 'None of yours counts yet.' : `${animals} of your animals ${animals === 1 ? 'counts' : 'count'}.`} {state}
      </p>
      <p className="small quiet-text">In brackets and as bars: where eight of ten animals lie. Marks: ○ published, × yours, ● what the forecast goes by now.</p>
      <table className="stacks yields" role="table">
        <caption className="visually-hidden">Shares of a {name}: published, yours, and what the forecast goes by now</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th scope="col" role="columnheader">Share</th>
            <th scope="col" role="columnheader">Published</th>
            <th scope="col" role="columnheader">Yours</th>
            <th scope="col" role="columnheader">Now</th>
            <td>
              <span className="visually-hidden">The same as a picture</span>
            </td>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {yieldRows(learned, { country: shop.nameCountry, locale: shop.locale, isOn: learning.isOn }).map(({ key, name: share, published, yours, now, marks }) => (
            <tr key={key} role="row">
              <th scope="row" role="rowheader">{share}</th>
              <td data-label="Published" className="number" role="cell">{published}</td>
              <td data-label="Yours" className="number" role="cell">{yours}</td>
              <td data-label="Now" className="number" role="cell">{now}</td>
              <td role="cell">
                <SharePlot marks={marks} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {mayJudge && (
        <form action={switchAction} className="row">
          <input type="hidden" name="species" value={speciesId} />
          {learning.isOn ? (
            <>
              <button className="button plain" name="to" value="off">
                Go by the published figures
              </button>
              <button className="button plain" name="to" value="anew">
                Begin anew from today
              </button>
            </>
          ) : (
            <button className="button" name="to" value="on">
              Learn from our animals
            </button>
          )}
        </form>
      )}
    </section>
  );
}
