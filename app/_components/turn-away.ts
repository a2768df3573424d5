import { redirect } from 'next/navigation';
import { NOTHING_HERE, STAFF_NOTHING_HERE } from '@/lib/auth/turned-away';

/**
 * Ends a page for which there is nothing: a dead link, an order nobody knows. A redirect to a page that answers with 404, because
 * the framework's own notFound() leaves the page empty where no script runs.
 */
export function nothingHere(where: 'public' | 'staff'): never {
  redirect(where === 'staff' ? STAFF_NOTHING_HERE : NOTHING_HERE);
}

/** The same for a file: a sentence instead of a page. */
export function noSuchFile(): Response {
  return new Response('There is nothing at this address. The link may have been cut short or have run out.\n', {
    status: 404,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
  });
}
