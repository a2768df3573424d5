import { nothingHere } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { currencyChoices, localeChoices, timeZoneChoices } from '@/lib/workflows/place-choices';
import { currentShop } from '@/lib/workflows/shop-settings';
import { DoneNotice } from '../../_components/done-notice';
import { PageHeader } from '../../_components/page-header';
import { SettingsForm } from './settings-form';

export const metadata = { title: null };

export default async function SettingsPage({ searchParams }: PageProps<'/staff/settings'>) {
  await requireStaff('shop.settings');
  const shop = await currentShop();
  if (shop === null) nothingHere('staff');
  const { law: _law, diseaseZones, collectWithinDays, hangDays, closeTrim, ...texts } = shop.settings;
  return (
    <main className="page" id="main">
      <PageHeader title="Settings" lede="How the shop is called, what it measures in, and what its place demands." />
      <DoneNotice done={(await searchParams).done} words={{ saved: 'Saved. New pages and papers follow these settings.' }} />
      <SettingsForm
        key={shop.version}
        version={shop.version}
        settings={{ ...texts, diseaseZones: diseaseZones.join('\n'), collectWithinDays: String(collectWithinDays), hangDays: hangDays === null ? '' : String(hangDays), ...(closeTrim && { closeTrim: 'on' }) }}
        currencies={currencyChoices()}
        timeZones={timeZoneChoices()}
        locales={localeChoices()}
      />
    </main>
  );
}
