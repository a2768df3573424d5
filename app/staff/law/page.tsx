import Link from 'next/link';
import { DoneNotice } from '@/app/_components/done-notice';
import { PageHeader } from '@/app/_components/page-header';
import { nothingHere } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { lawFormValues, lawReader } from '@/lib/forms';
import { NOT_ADVICE, lawPack } from '@/lib/law';
import { currentShop } from '@/lib/workflows/shop-settings';
import { LawForm } from './law-form';
import './law.css';

export const metadata = { title: null };

/** Whose law the shop goes by, point by point, and what it changed of it. */
export default async function LawPage({ searchParams }: PageProps<'/staff/law'>) {
  await requireStaff('shop.settings');
  const [shop, { done, version }] = await Promise.all([currentShop(), searchParams]);
  if (shop === null) nothingHere('staff');
  const { law, diseaseZones } = shop.settings;
  const reader = lawReader(shop.settings);
  const values = { ...lawFormValues(law, reader), packId: lawPack(law.packId).id, baseVersion: String(shop.version) };
  return (
    <main className="page wide" id="main">
      <PageHeader title="Law" lede="What your place allows and asks, point by point, and where each figure comes from." />
      <DoneNotice done={done} words={{ saved: 'Saved. This holds from now on.' }} />
      <div className="caution" role="note">
        <p>{NOT_ADVICE}</p>
      </div>
      {/* Anew after a save, but not around a refused form: without script its answer would be lost with its key. */}
      <LawForm key={String(version)} law={law} values={values} reader={reader}>
        <p>
          {diseaseZones.length === 0 ? 'You list no disease zone.' : `Your disease zones: ${diseaseZones.join(', ')}.`}{' '}
          <Link href="/staff/settings#diseaseZones">{diseaseZones.length === 0 ? 'List them' : 'Change them'} in the settings</Link>
        </p>
      </LawForm>
    </main>
  );
}
