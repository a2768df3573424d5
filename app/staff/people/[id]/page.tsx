import { nothingHere } from '@/app/_components/turn-away';
import { roleWords } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { loadPeople } from '@/lib/workflows/people';
import { PageHeader } from '../../../_components/page-header';
import { PersonForms } from './person-forms';

export const metadata = { title: null };

export default async function PersonPage({ params }: PageProps<'/staff/people/[id]'>) {
  const actor = await requireStaff('staff.manage');
  const { id } = await params;
  const person = (await loadPeople(actor)).find((one) => one.id === id);
  if (!person) nothingHere('staff');
  return (
    <main className="page" id="main">
      <PageHeader title={person.name} back={{ href: '/staff/people', text: 'People' }}>
        {person.disabledAt && <span className="tag open">shut out</span>}
      </PageHeader>
      <dl className="facts">
        <div>
          <dt>User name</dt>
          <dd>{person.userName}</dd>
        </div>
        <div>
          <dt>Does here</dt>
          <dd>
            {roleWords(person.role).name}: {roleWords(person.role).work}
          </dd>
        </div>
      </dl>
      <PersonForms id={person.id} name={person.name} disabled={person.disabledAt !== null} self={person.id === actor.id} />
    </main>
  );
}
