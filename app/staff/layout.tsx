import type { ReactNode } from 'react';
import { currentStaff } from '@/lib/auth/current-staff';
import { currentShop } from '@/lib/workflows/shop-settings';
import { Masthead } from './masthead';

/** The frame of every staff page. It guards nothing: each page and action asks for its permission itself. */
export default async function StaffLayout({ children }: { readonly children: ReactNode }) {
  const staff = await currentStaff();
  if (staff === null) return children;
  const shop = await currentShop();
  return (
    <>
      <Masthead staff={staff} shop={shop?.settings.name ?? ''} />
      {children}
    </>
  );
}
