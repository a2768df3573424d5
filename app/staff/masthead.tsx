import { can, roleWords, type Permission, type StaffActor } from '@/lib/access';
import { Wordmark } from '../_components/wordmark';
import './masthead.css';
import { signOutAction } from '../sign-in/actions';
import { SectionLinks } from './section-links';

const sections: readonly { readonly href: string; readonly text: string; readonly permission: Permission }[] = [
  { href: '/staff', text: 'Orders', permission: 'order.find' },
  { href: '/staff/prices', text: 'Prices', permission: 'prices.read' },
  { href: '/staff/yields', text: 'Yields', permission: 'yields.read' },
  { href: '/staff/people', text: 'People', permission: 'staff.manage' },
  { href: '/staff/law', text: 'Law', permission: 'shop.settings' },
  { href: '/staff/rules', text: 'Rules', permission: 'shop.settings' },
  { href: '/staff/settings', text: 'Settings', permission: 'shop.settings' },
];

/** The bar on top of every staff page: the sections this person may open, the find box, who is signed in. */
export function Masthead({ staff, shop }: { readonly staff: StaffActor; readonly shop: string }) {
  return (
    <header className="masthead staff">
      <Wordmark href="/staff" shop={shop} />
      <nav className="nav" aria-label="Sections">
        <SectionLinks sections={sections.filter(({ permission }) => can(staff, permission)).map(({ href, text }) => ({ href, text }))} />
      </nav>
      <search className="masthead-find">
        <form action="/staff" method="get">
          <label htmlFor="masthead-find">Find by number, name, phone or tag</label>
          <input id="masthead-find" name="find" type="search" autoComplete="off" enterKeyHint="search" />
          <button className="button plain">Find</button>
        </form>
      </search>
      <form action={signOutAction} className="masthead-who">
        <span>
          {staff.name} <span className="quiet-text">{roleWords(staff.role).name.toLowerCase()}</span>
        </span>
        <button className="button quiet">Sign out</button>
      </form>
    </header>
  );
}
