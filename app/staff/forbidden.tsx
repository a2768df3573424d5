import { headers } from 'next/headers';
import Link from 'next/link';
import { pathHeader } from '@/lib/auth/request-path';
import { PageHeader } from '../_components/page-header';

export const metadata = { title: null };

const names: Readonly<Record<string, string>> = {
  prices: 'prices',
  people: 'the list of people',
  settings: 'the shop settings',
  audit: 'the record of changes',
};

export default async function NotForThisAccount() {
  const path = (await headers()).get(pathHeader) ?? '';
  const section = /^\/staff\/([a-z-]+)/.exec(path)?.[1] ?? '';
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
