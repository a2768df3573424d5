import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import './_look/look.css';
import { fontClasses } from './fonts';

export const metadata: Metadata = {
  title: { template: '%s · Gambrel', default: 'Gambrel' },
  description: 'Cutting orders of a game processor',
  robots: { index: false, follow: false },
  formatDetection: { telephone: false, email: false, address: false, date: false },
};

export const viewport: Viewport = { width: 'device-width', initialScale: 1, colorScheme: 'light dark' };

export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  // Every page carries its own nonce, so none is made before it is asked for.
  await connection();
  return (
    <html lang="en" className={fontClasses}>
      <body>
        <a className="skip" href="#main">
          Skip to the content
        </a>
        {children}
      </body>
    </html>
  );
}
