import { describe, expect, test } from 'vitest';
import {
  AccessRefused,
  can,
  isRole,
  PERMISSIONS,
  refusalWords,
  requirePermission,
  ROLES,
  roleWords,
  type Permission,
  type Role,
} from '@/lib/access';

const yes = true;
const no = false;

/** Written out in full, apart from the table it checks: a new permission fails here until it has its row. */
const matrix: Readonly<Record<Permission, Readonly<Record<Role, boolean>>>> = {
  'order.find': { owner: yes, counter: yes, cutter: yes },
  'order.read': { owner: yes, counter: yes, cutter: yes },
  'order.write': { owner: yes, counter: yes, cutter: no },
  'order.receive': { owner: yes, counter: yes, cutter: no },
  'order.answer': { owner: yes, counter: yes, cutter: no },
  'sheet.print': { owner: yes, counter: yes, cutter: yes },
  'bench.start': { owner: yes, counter: yes, cutter: yes },
  'pack.weigh': { owner: yes, counter: yes, cutter: yes },
  'invoice.issue': { owner: yes, counter: yes, cutter: no },
  'payment.take': { owner: yes, counter: yes, cutter: no },
  'order.release': { owner: yes, counter: yes, cutter: no },
  'prices.read': { owner: yes, counter: yes, cutter: no },
  'prices.write': { owner: yes, counter: no, cutter: no },
  'yields.read': { owner: yes, counter: yes, cutter: no },
  'yields.judge': { owner: yes, counter: no, cutter: no },
  'shop.settings': { owner: yes, counter: no, cutter: no },
  'staff.manage': { owner: yes, counter: no, cutter: no },
  'audit.read': { owner: yes, counter: no, cutter: no },
};

const staff = (role: Role) => ({ kind: 'staff', id: 'staff-1', name: 'Bo', role }) as const;

describe('who may do what', () => {
  for (const permission of Object.keys(matrix) as Permission[]) {
    for (const role of ROLES) {
      const allowed = matrix[permission][role];
      test(`${role} ${allowed ? 'may' : 'may not'} ${permission}`, () => {
        expect(can(staff(role), permission)).toBe(allowed);
      });
    }
  }

  test('the matrix covers every permission', () => {
    expect(Object.keys(matrix).toSorted()).toEqual([...PERMISSIONS].toSorted());
  });

  test('a hunter holds no permission of the staff, the program holds all', () => {
    for (const permission of PERMISSIONS) {
      expect(can({ kind: 'hunter', orderId: 'order-1' }, permission)).toBe(false);
      expect(can({ kind: 'system' }, permission)).toBe(true);
    }
  });
});

test('requirePermission lets pass who may, and throws a typed refusal with a sentence', () => {
  expect(() => requirePermission(staff('owner'), 'prices.write')).not.toThrow();
  expect(() => requirePermission(staff('cutter'), 'prices.read')).toThrow(AccessRefused);
  expect(() => requirePermission(staff('cutter'), 'prices.read')).toThrow('Your account cannot open prices. Ask the owner.');
});

test('every refusal is one plain sentence and a way on', () => {
  for (const permission of PERMISSIONS) {
    expect(refusalWords(permission)).toMatch(/^Your account cannot [a-z ]+\. Ask the owner\.$/);
  }
});

test('roles are known by their words', () => {
  expect(ROLES.map((role) => roleWords(role).name)).toEqual(['Owner', 'Counter', 'Cutter']);
  expect(isRole('cutter')).toBe(true);
  expect(isRole('toString')).toBe(false);
});
