import { ROLES, roleWords } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { PageHeader } from '../../../_components/page-header';
import { AddPersonForm } from './add-person-form';

export const metadata = { title: null };

export default async function AddPersonPage() {
  await requireStaff('staff.manage');
  return (
    <main className="page" id="main">
      <PageHeader title="Add a person" back={{ href: '/staff/people', text: 'People' }} />
      <AddPersonForm roles={ROLES.map((role) => ({ value: role, ...roleWords(role) }))} />
    </main>
  );
}
