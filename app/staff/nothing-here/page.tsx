import { requireStaff } from '@/lib/auth/current-staff';
import NothingHere from '../not-found';

export const metadata = { title: null };

export default async function StaffNothingHere() {
  await requireStaff('order.read');
  return <NothingHere />;
}
