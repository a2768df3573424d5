import { requirePermission, type StaffActor } from '@/lib/access';
import { hashPassword } from '@/lib/auth/password-hash';
import { throttledAccount } from '@/lib/auth/sign-in';
import { checkForm, newStaffSchema, passwordProblem, refuseField, refuseForm, type FormOutcome } from '@/lib/forms';
import { recordAudit } from '@/lib/db/audit';
import { database, withTransaction } from '@/lib/db/client';
import { orConflict } from '@/lib/db/conflicts';
import { clearThrottle } from '@/lib/db/sign-in-throttle';
import { countOwners, createStaff, findStaff, listStaff, replacePassword, setStaffDisabled, type StaffMember } from '@/lib/db/staff';

/** Everybody who works here, for the owner. */
export async function loadPeople(actor: StaffActor): Promise<readonly StaffMember[]> {
  requirePermission(actor, 'staff.manage');
  return listStaff(database());
}

/** Adds a person with a first password. */
export async function addPerson(actor: StaffActor, typed: unknown): Promise<FormOutcome<StaffMember>> {
  requirePermission(actor, 'staff.manage');
  const checked = checkForm(newStaffSchema, typed);
  if (!checked.ok) return checked;
  const { password, ...person } = checked.value;
  const passwordHash = await hashPassword(password);
  const saved = await orConflict(
    () =>
      withTransaction(async (transaction) => {
        const added = await createStaff(transaction, { ...person, passwordHash });
        await recordAudit(transaction, actor, 'person-added', { after: person });
        return added;
      }),
    { email: 'taken', username: 'taken' },
  );
  return saved.ok ? saved : refuseField('userName', 'Choose another user name: somebody here has this one');
}

/** Shuts a person out at once, or lets one in again. Nobody shuts out themselves or the last owner. */
export async function setPersonDisabled(actor: StaffActor, id: string, disabled: boolean): Promise<FormOutcome<StaffMember>> {
  requirePermission(actor, 'staff.manage');
  return withTransaction(async (transaction) => {
    const person = await findStaff(transaction, { id });
    if (person === null) return refuseForm('This person is no longer in the list');
    if (disabled && person.id === actor.id) return refuseForm('You cannot shut out yourself. Another owner can');
    if ((person.disabledAt !== null) === disabled) return { ok: true, value: person };
    if (disabled && person.role === 'owner' && (await countOwners(transaction)) <= 1) {
      return refuseForm('The shop needs an owner who can sign in');
    }
    await setStaffDisabled(transaction, id, disabled ? new Date() : null);
    await recordAudit(transaction, actor, disabled ? 'person-disabled' : 'person-enabled', {
      before: { userName: person.userName, disabled: !disabled },
      after: { userName: person.userName, disabled },
    });
    return { ok: true, value: person };
  });
}

/** Gives a person a new password: every session of theirs ends, and an account closed by wrong passwords opens again. */
export async function givePassword(actor: StaffActor, id: string, password: string): Promise<FormOutcome<StaffMember>> {
  requirePermission(actor, 'staff.manage');
  const person = await findStaff(database(), { id });
  if (person === null) return refuseForm('This person is no longer in the list');
  const problem = passwordProblem(password, [person.name, person.userName]);
  if (problem !== null) return refuseField('password', problem);
  const passwordHash = await hashPassword(password);
  await withTransaction(async (transaction) => {
    await replacePassword(transaction, id, passwordHash);
    await clearThrottle(transaction, throttledAccount(person.userName).key);
    await recordAudit(transaction, actor, 'password-replaced', { after: { userName: person.userName } });
  });
  return { ok: true, value: person };
}
