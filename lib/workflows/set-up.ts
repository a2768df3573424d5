import { timingSafeEqual } from 'node:crypto';
import { hashPassword } from '@/lib/auth/password-hash';
import { logSecurity } from '@/lib/auth/security-log';
import { forgiveTry, setUpPolicy, takeTry, throttleKey } from '@/lib/auth/throttle';
import { checkForm, firstShopSettings, refuseField, refuseForm, setUpSchema, type FormOutcome } from '@/lib/forms';
import { recordAudit } from '@/lib/db/audit';
import { database, withTransaction } from '@/lib/db/client';
import { createShop } from '@/lib/db/shop';
import { createStaff, hasStaff, type StaffMember } from '@/lib/db/staff';
import { firstTariff } from '@/seed/default-tariff';
import { waitWords } from '@/lib/auth/wait-words';

/** Set-up is open while nobody works here, and closes for good with the first owner. */
export async function isSetUpOpen(): Promise<boolean> {
  return !(await hasStaff(database()));
}

/**
 * Sets the shop up in one go: shop, first price list, owner. `code` is the one-time code of the console. A wrong code is
 * said before anything else, so that nobody without it learns what else the form would say.
 */
export async function setUpShop(typed: Readonly<Record<string, string>>, { code, now }: { code: string; now: Date }): Promise<FormOutcome<StaffMember>> {
  const keys = [{ key: throttleKey('set-up', 'code'), policy: setUpPolicy }];
  const taken = await takeTry(keys, now);
  if (taken.outcome === 'wait') return refuseForm(`Too many wrong codes. ${waitWords(taken.until, now)}`);
  if (!isCode(typed['code'] ?? '', code)) {
    logSecurity('set-up code refused', {});
    return refuseField('code', 'Enter the code as the console shows it. It changes each time Gambrel is started');
  }
  await withTransaction((transaction) => forgiveTry(transaction, keys, now));

  const checked = checkForm(setUpSchema, typed);
  if (!checked.ok) return checked;
  const { shopName, ownerName, userName, password, unit, currency, paper, nameCountry, timeZone } = checked.value;
  const settings = firstShopSettings({ name: shopName, unit, currency, paper, nameCountry, timeZone });
  const passwordHash = await hashPassword(password);
  return withTransaction(async (transaction) => {
    if (await hasStaff(transaction)) return refuseForm('The shop has just been set up by somebody else. Ask them for an account');
    const owner = await createStaff(transaction, { name: ownerName, userName, role: 'owner', passwordHash });
    await createShop(transaction, { settings, tariff: { ...firstTariff(nameCountry), currency, weightUnit: unit }, createdBy: owner.name });
    const actor = { kind: 'staff', id: owner.id, name: owner.name, role: owner.role } as const;
    await recordAudit(transaction, actor, 'shop-set-up', { after: settings });
    return { ok: true, value: owner };
  });
}

/** Compares codes as read aloud: small or capital, with or without hyphens, O for 0, I and L for 1. */
function isCode(typed: string, code: string): boolean {
  const given = Buffer.from(plainCode(typed));
  const wanted = Buffer.from(plainCode(code));
  return wanted.length > 0 && given.length === wanted.length && timingSafeEqual(given, wanted);
}

function plainCode(text: string): string {
  return text.toUpperCase().replace(/[^A-Z0-9]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
}
