import { redirect } from 'next/navigation';
import { PageHeader } from '../_components/page-header';
import { PlainPage } from '../_components/plain-page';
import { currentStaff } from '@/lib/auth/current-staff';
import { nextPath } from '@/lib/auth/request-path';
import { isSetUpOpen } from '@/lib/workflows/set-up';
import { SignInForm } from './sign-in-form';

// The form writes the title, which says when it was refused.
export const metadata = { title: null };

export default async function SignInPage({ searchParams }: PageProps<'/sign-in'>) {
  const { next, done } = await searchParams;
  const target = nextPath(typeof next === 'string' ? next : null);
  if (await isSetUpOpen()) redirect('/setup');
  if ((await currentStaff()) !== null) redirect(target);
  return (
    <PlainPage>
      <PageHeader title="Sign in" lede="For the people who work here. Hunters need no account: your link is enough." />
      {done === 'signed-out' && (
        <p className="notice good" role="status">
          You have signed out.
        </p>
      )}
      <SignInForm next={target} />
    </PlainPage>
  );
}
