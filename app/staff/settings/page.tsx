import { nothingHere } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { minceName } from '@/lib/cuts';
import { capital, termsEntries } from '@/lib/forms';
import { PRODUCT_IDS } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { currencyChoices, localeChoices, timeZoneChoices } from '@/lib/workflows/place-choices';
import { currentShop } from '@/lib/workflows/shop-settings';
import { DoneNotice } from '../../_components/done-notice';
import { PageHeader } from '../../_components/page-header';
import { SettingsForm } from './settings-form';

export const metadata = { title: null };

export default async function SettingsPage({ searchParams }: PageProps<'/staff/settings'>) {
  await requireStaff('shop.settings');
  const [shop, { done, version }] = await Promise.all([currentShop(), searchParams]);
  if (shop === null) nothingHere('staff');
  const { law: _law, ruleChanges: _rules, diseaseZones, collectWithinDays, hangDays, closeTrim, mixedOnly, allergens, plainDays, madeDays, madeUntil, mostFatPercent, ...texts } = shop.settings;
  return (
    <main className="page" id="main">
      <PageHeader title="Settings" lede="How the shop is called, what it measures in, and what its place demands." />
      <DoneNotice done={done} words={{ saved: 'Saved. New pages and papers follow these settings.' }} />
      {/* Anew after a save, but not around a refused form: without script its answer would be lost with its key. */}
      <SettingsForm
        key={String(version)}
        settings={{ ...texts, baseVersion: String(shop.version), diseaseZones: diseaseZones.join('\n'), collectWithinDays: String(collectWithinDays), hangDays: hangDays === null ? '' : String(hangDays), ...(closeTrim && { closeTrim: 'on' }), ...termsEntries({ mixedOnly, allergens, plainDays, madeDays, madeUntil, mostFatPercent }) }}
        products={PRODUCT_IDS.map((id) => ({ value: id, text: capital(PRODUCTS[id].name) }))}
        mince={minceName(texts.nameCountry)}
        currencies={currencyChoices()}
        timeZones={timeZoneChoices()}
        locales={localeChoices()}
      />
    </main>
  );
}
