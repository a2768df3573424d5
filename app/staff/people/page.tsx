import type { Metadata } from 'next';
import Link from 'next/link';
import { roleWords } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { loadPeople } from '@/lib/workflows/people';
import { DoneNotice } from '../../_components/done-notice';
import { PageHeader } from '../../_components/page-header';

export const metadata: Metadata = { title: 'People' };

const done = {
  added: 'Added. This person can sign in now.',
  disabled: 'Shut out. Every session of this person has ended.',
  enabled: 'Let in again. The password is the one from before.',
  password: 'New password saved. Every session of this person has ended.',
};

export default async function PeoplePage({ searchParams }: PageProps<'/staff/people'>) {
  const actor = await requireStaff('staff.manage');
  const people = await loadPeople(actor);
  return (
    <main className="page wide" id="main">
      <PageHeader title="People" lede="Who works here, and what each account can do.">
        <Link className="button primary" href="/staff/people/add">
          Add a person
        </Link>
      </PageHeader>
      <DoneNotice done={(await searchParams).done} words={done} />
      <table className="stacks">
        <caption className="visually-hidden">People who work here</caption>
        <thead>
          <tr>
            <th scope="col">Name</th>
            <th scope="col">User name</th>
            <th scope="col">Does here</th>
            <th scope="col">Account</th>
            <th scope="col">
              <span className="visually-hidden">Change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {people.map((person) => (
            <tr key={person.id}>
              <th scope="row">{person.name}</th>
              <td data-label="User name">{person.userName}</td>
              <td data-label="Does here">{roleWords(person.role).name}</td>
              <td data-label="Account">
                {person.disabledAt === null ? <span>open</span> : <span className="tag open">shut out</span>}
              </td>
              <td>
                <Link href={`/staff/people/${person.id}`}>
                  Change<span className="visually-hidden"> {person.name}</span>
                </Link>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </main>
  );
}
