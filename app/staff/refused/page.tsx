import Link from 'next/link';
import { redirect } from 'next/navigation';
import { currentStaff } from '@/lib/auth/current-staff';
import { PageHeader } from '../../_components/page-header';

export const metadata = { title: null };

const names: Readonly<Record<string, string>> = {
  prices: 'prices',
  yields: 'the yields',
  people: 'the list of people',
  settings: 'the shop settings',
  audit: 'the record of changes',
};

/** Where somebody signed in ends who may not see a page: `?from=` says which. */
export default async function NotForThisAccount({ searchParams }: PageProps<'/staff/refused'>) {
  if ((await currentStaff()) === null) redirect('/sign-in');
  const { from } = await searchParams;
  const section = /^\/staff\/([a-z-]+)/.exec(typeof from === 'string' ? from : '')?.[1] ?? '';
  return (
    <main className="page wide" id="main">
      <title>Not for this account · Gambrel</title>
      <PageHeader title={`Your account cannot open ${names[section] ?? 'this page'}. Ask the owner.`} />
      <p className="buttons">
        <Link className="button plain" href="/staff">
          Go to the orders
        </Link>
      </p>
    </main>
  );
}
