import { PageHeader } from '../_components/page-header';
import { PlainPage } from '../_components/plain-page';
import { nothingHere } from '@/app/_components/turn-away';
import { currencyChoices, serverTimeZone, timeZoneChoices } from '@/lib/workflows/place-choices';
import { isSetUpOpen } from '@/lib/workflows/set-up';
import { SetUpForm } from './set-up-form';

export const metadata = { title: null };

export default async function SetUpPage() {
  if (!(await isSetUpOpen())) nothingHere('public');
  return (
    <PlainPage>
      <PageHeader title="Set up the shop" lede="This is asked once. Everything but the user name can be changed later." />
      {process.env['GAMBREL_SETUP_CODE'] ? (
        <SetUpForm currencies={currencyChoices()} timeZones={timeZoneChoices()} timeZone={serverTimeZone()} />
      ) : (
        <>
          <title>Set up the shop · Gambrel</title>
          <p className="notice">Stop Gambrel and start it again with npm start: its console then shows the code that opens this page.</p>
        </>
      )}
    </PlainPage>
  );
}
