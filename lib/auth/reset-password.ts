import { closeDatabase, database, withTransaction } from '@/lib/db/client';
import { recordAudit } from '@/lib/db/audit';
import { clearThrottle } from '@/lib/db/sign-in-throttle';
import { findStaff, listStaff, replacePassword, setStaffDisabled } from '@/lib/db/staff';
import { normalizeUserName } from '@/lib/forms';
import { hashPassword, makePassword } from './password-hash';
import { throttleKey } from './throttle';

// For an owner who lost the password: `npx tsx lib/auth/reset-password.ts <user name>` on the machine that holds the data.
const userName = normalizeUserName(process.argv[2] ?? '');
const member = userName === '' ? null : await findStaff(database(), { userName });

if (member === null) {
  const names = (await listStaff(database())).map((person) => person.userName).join(', ');
  console.error(`${userName === '' ? 'Give a user name' : `Nobody has the user name ${userName}`}. There are: ${names || 'none yet'}.`);
  process.exitCode = 1;
} else {
  const password = makePassword();
  const passwordHash = await hashPassword(password);
  await withTransaction(async (transaction) => {
    await replacePassword(transaction, member.id, passwordHash);
    if (member.disabledAt !== null) await setStaffDisabled(transaction, member.id, null);
    await clearThrottle(transaction, throttleKey('account', userName));
    await recordAudit(transaction, { kind: 'system' }, 'password-replaced-at-the-console', { after: { userName } });
  });
  console.log(`The new password of ${member.name} (${userName}): ${password}\nWrite it down: it is not shown again. All sessions of this account have ended.`);
}
await closeDatabase();
