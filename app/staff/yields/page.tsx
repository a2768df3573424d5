import { DoneNotice } from '@/app/_components/done-notice';
import { PageHeader } from '@/app/_components/page-header';
import { can } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { type NameCountry, partName } from '@/lib/cuts';
import { capital } from '@/lib/forms';
import { type LearnedShare, PRIOR_ANIMALS } from '@/lib/learning';
import { formatOrderNumber } from '@/lib/orders';
import { shopSettings } from '@/lib/workflows/shop-settings';
import { type SpeciesYield, type YieldsView, readYields } from '@/lib/workflows/yields';
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

const Z90 = 1.2816;

/** What the shop's own animals have taught the forecast, and what it does not learn from until somebody says so. */
export default async function YieldsPage({ searchParams }: PageProps<'/staff/yields'>) {
  const staff = await requireStaff('yields.read');
  const [{ species, doubted }, shop, { done }] = await Promise.all([readYields(staff), shopSettings(), searchParams]);
  const mayJudge = can(staff, 'yields.judge');
  return (
    <main className="page wide" id="main">
      <PageHeader
        title="Yields"
        lede={`What your own packed animals say, beside what was published. The published figures count as ${PRIOR_ANIMALS} animals; the more of yours there are, the more yours decide.`}
      />
      <DoneNotice done={done} words={DONE} />
      {doubted.length > 0 && <Doubted doubted={doubted} mayJudge={mayJudge} />}
      {species.length === 0 && <p>No animal has been weighed on the rail and packed yet. From the first one on, this page shows what it told.</p>}
      {species.map((one) => (
        <SpeciesSection key={one.speciesId} one={one} country={shop.nameCountry} mayJudge={mayJudge} locale={shop.locale} />
      ))}
    </main>
  );
}

function Doubted({ doubted, mayJudge }: { readonly doubted: YieldsView['doubted']; readonly mayJudge: boolean }) {
  return (
    <section className="section" aria-labelledby="doubted">
      <h2 id="doubted">Too odd to learn from</h2>
      <p className="quiet-text">A wrong unit, a lug of another animal, or really such an animal. They stay out until you say that they are right.</p>
      <ul className="stack">
        {doubted.map(({ id, orderNumber, hunterName, animal, doubt }) => (
          <li className="panel" key={id}>
            <p>
              <a href={`/staff/orders/${orderNumber}`}>{formatOrderNumber(orderNumber)}</a>, {hunterName}, {animal}:{' '}
              {doubt.of === 'meat' ? 'the meat came to' : 'it hung at'} <b>{percent(doubt.found)}</b>
              {doubt.of === 'meat' ? ' of what hung' : ' of what came in'}; about {percent(doubt.expected)} was to be expected.
            </p>
            {mayJudge && (
              <form action={judgeAction} className="row">
                <input type="hidden" name="id" value={id} />
                <button className="button" name="verdict" value="confirmed">
                  It is right: count it
                </button>
                <button className="button plain" name="verdict" value="left-out">
                  Leave it out
                </button>
              </form>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

type SpeciesSectionProps = { readonly one: SpeciesYield; readonly country: NameCountry; readonly mayJudge: boolean; readonly locale: string };

function SpeciesSection({ one: { speciesId, name, learned, learning }, country, mayJudge, locale }: SpeciesSectionProps) {
  const animals = Math.max(...learned.shares.map(({ own }) => own.animals));
  const state = learning.isOn
    ? `The forecast learns from them${learning.since ? `, from ${new Intl.DateTimeFormat(locale, { dateStyle: 'medium' }).format(learning.since)} on` : ''}.`
    : 'Switched off: the forecast goes by the published figures.';
  return (
    <section className="section" aria-labelledby={`yield-${speciesId}`}>
      <h2 id={`yield-${speciesId}`}>{capital(name)}</h2>
      <p>
        {animals === 0 ? 'None of yours counts yet.' : `${animals} of your animals ${animals === 1 ? 'counts' : 'count'}.`} {state}
      </p>
      <table className="stacks yields">
        <caption className="visually-hidden">Shares of a {name}: published, yours, and what the forecast goes by now</caption>
        <thead>
          <tr>
            <th scope="col">Share</th>
            <th scope="col">Published</th>
            <th scope="col">Yours</th>
            <th scope="col">Now</th>
            <th scope="col">
              <span aria-hidden="true">○ published, × yours, ● now</span>
              <span className="visually-hidden">Plot</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {learned.shares.map((share) => (
            <tr key={share.of}>
              <th scope="row">{shareName(share.of, country)}</th>
              <td data-label="Published" className="number">
                {range(share.prior)}
              </td>
              <td data-label="Yours" className="number">
                {share.own.mean === null ? 'none yet' : `${percent(share.own.mean)}, ${share.own.animals} ${share.own.animals === 1 ? 'animal' : 'animals'}`}
              </td>
              <td data-label="Now" className="number">
                {learning.isOn ? range(share.result) : range(share.prior)}
              </td>
              <td data-label="Plot">
                <SharePlot share={share} />
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

function shareName(of: LearnedShare['of'], country: NameCountry): string {
  if (of === 'hanging') return 'Hangs, of what comes field-dressed';
  if (of === 'meat') return 'Clean meat, of what hangs';
  return `${capital(partName(of, country))}, of the clean meat`;
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}

/** Mean, and where eight in ten lie. */
function range({ mean, sd }: { readonly mean: number; readonly sd: number }): string {
  return `${percent(mean)} (${((mean - Z90 * sd) * 100).toFixed(0)} to ${((mean + Z90 * sd) * 100).toFixed(0)})`;
}
