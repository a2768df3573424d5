'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';

type SectionLinksProps = { readonly sections: readonly { readonly href: string; readonly text: string }[] };

/** The links to the sections. The one with the longest address that the page lies under is the current one. */
export function SectionLinks({ sections }: SectionLinksProps) {
  const path = usePathname();
  const current = sections
    .filter(({ href }) => path === href || path.startsWith(`${href}/`))
    .toSorted((a, b) => b.href.length - a.href.length)[0];
  return (
    <ul>
      {sections.map(({ href, text }) => (
        <li key={href}>
          <Link href={href} aria-current={href === current?.href ? (path === href ? 'page' : 'true') : undefined}>
            {text}
          </Link>
        </li>
      ))}
    </ul>
  );
}
