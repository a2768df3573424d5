import Link from 'next/link';
import { PageHeader } from '../_components/page-header';

export const metadata = { title: null };

export default function NothingHere() {
  return (
    <main className="page wide" id="main">
      <title>Nothing here · Gambrel</title>
      <PageHeader title="There is nothing at this address" lede="The number may be mistyped, or what was here has been taken away." />
      <p className="buttons">
        <Link className="button plain" href="/staff">
          Go to the orders
        </Link>
      </p>
    </main>
  );
}
