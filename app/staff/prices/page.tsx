import { DoneNotice } from '@/app/_components/done-notice';
import { PageHeader } from '@/app/_components/page-header';
import { momentWords } from '@/app/staff/_components/moments';
import '@/app/staff/_components/counter.css';
import { can } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { CUT_IDS, type CutId, type NameCountry, cutName } from '@/lib/cuts';
import { capital, tariffFormEntries, tariffFormValues } from '@/lib/forms';
import { readTariff } from '@/lib/workflows/prices';
import { shopSettings } from '@/lib/workflows/shop-settings';
import { speciesBook } from '@/lib/workflows/species-book';
import { ExamplePrice } from './example-price';
import { PriceForm } from './price-form';
import { PriceList } from './price-list';

export const metadata = { title: null };

/** The list a shop begins with, before anybody has set a price. */
const FIRST_VERSION = 1;

/** The price list: to read for the counter, to change for the owner. */
export default async function PricesPage({ searchParams }: PageProps<'/staff/prices'>) {
  const staff = await requireStaff('prices.read');
  const [{ tariff, versionId, since, by }, shop, book, { done }] = await Promise.all([readTariff(staff), shopSettings(), speciesBook(), searchParams]);
  const mayChange = can(staff, 'prices.write');
  const species = Object.values(book).map(({ id, name }) => ({ value: id, label: capital(name) }));
  return (
    <main className="page wide" id="main">
      <PageHeader title="Prices" lede={`In force since ${momentWords(since, shop)}, set by ${by}. Without tax.`} />
      {versionId === FIRST_VERSION && (
        <p className="notice">
          <b>These prices are an example that came with the program.</b> Hunters see them already: put your own in before you open.
        </p>
      )}
      <DoneNotice done={done} words={{ saved: 'Saved. Orders booked from now on go by these prices; earlier ones keep theirs.' }} />
      {mayChange ? (
        <PriceForm
          tariff={tariff}
          versionId={versionId}
          values={Object.fromEntries(tariffFormEntries(tariffFormValues(tariff, shop.locale)))}
          locale={shop.locale}
          species={species}
          cuts={CUT_IDS.filter((id) => id !== 'leave-out').map((id) => ({ value: id, label: cutLabel(id, shop.nameCountry) }))}
        />
      ) : (
        <div className="split">
          <PriceList tariff={tariff} locale={shop.locale} country={shop.nameCountry} species={book} />
          <ExamplePrice tariff={tariff} locale={shop.locale} species={species} />
        </div>
      )}
      {!mayChange && <title>Prices · Gambrel</title>}
    </main>
  );
}

/** A shank is cut by words that other parts have too. */
function cutLabel(cut: CutId, country: NameCountry): string {
  return cut.startsWith('shank-') ? `Shank, ${cutName(cut, country)}` : capital(cutName(cut, country));
}
