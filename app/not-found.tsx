import { PageHeader } from './_components/page-header';
import { PlainPage } from './_components/plain-page';

// Written below: the title of a page that turned out missing does not reach the browser from here.
export const metadata = { title: null };

export default function NotFound() {
  return (
    <PlainPage>
      <title>Nothing here · Gambrel</title>
      <PageHeader
        title="There is nothing at this address"
        lede="The link may have been cut short or have run out, or the page has moved."
      />
      <p>If you came by a link from the shop, open it again from the message you got, or ask the shop for a new one.</p>
      <p className="buttons">
        {/* oxlint-disable-next-line nextjs/no-html-link-for-pages -- every page carries this one, and the link's script with it */}
        <a className="button plain" href="/">
          Go to the front page
        </a>
      </p>
    </PlainPage>
  );
}
