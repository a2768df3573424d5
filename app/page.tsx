import Link from 'next/link';
import { CarcassDrawing } from './_components/carcass-drawing';
import { Caution } from './_components/caution';
import { HunterPage } from './_components/hunter-page';
import { PageHeader } from './_components/page-header';
import { PlainPage } from './_components/plain-page';
import { chartRows, cookingCaution, priceWords, type PriceWords } from '@/lib/documents';
import { CAUTIONS } from '@/lib/rules';
import { openOrderForm, type HunterShop } from '@/lib/workflows/hunter-orders';
import { hunterShapes } from './order/hunter-shapes';
import './order/order.css';

export async function generateMetadata() {
  const shop = await openOrderForm();
  return { title: { absolute: shop?.name ?? 'Gambrel' }, robots: { index: true, follow: false } };
}

export default async function FrontPage() {
  const shop = await openOrderForm();
  return shop ? <ShopFront shop={shop} /> : <NotOpenYet />;
}

function ShopFront({ shop }: { readonly shop: HunterShop }) {
  const prices = priceWords(shop.tariff, shop.locale);
  return (
    <HunterPage shop={shop} foot={<Link href="/sign-in" prefetch={false}>Staff sign-in</Link>}>
      <PageHeader title={shop.name} lede="Say how your animal is to be cut, here on your phone. See what it gives before you send." />
      <div className="buttons">
        <Link className="button primary large" href="/order" prefetch={false}>
          Start an order
        </Link>
      </div>
      <div className="chart front-drawing" aria-hidden="true">
        <CarcassDrawing shapes={hunterShapes} side="left" parts={chartRows(null, shop.country)} isPointerOnly showsMuscles={false} />
      </div>
      <section className="section" aria-labelledby="how">
        <h2 id="how">How it goes</h2>
        <ol className="how-steps">
          <li>
            <b>Fill in the form.</b> Which animal, which cuts, what becomes of the rest. It tells you at once{' '}
            <Link href="/rules" prefetch={false}>
              what does not fit
            </Link>
            .
          </li>
          <li>
            <b>Bring it in.</b> Give your name or the number you got. The shop weighs it, tags it and hangs it.
          </li>
          <li>
            <b>Collect it.</b> The shop calls when it is ready. You pay for what was weighed.
          </li>
        </ol>
      </section>
      <section className="section" aria-labelledby="bring">
        <h2 id="bring">What to bring</h2>
        <ul>
          <li>The animal, gutted and cooled as soon as you can.</li>
          <li>Your hunting {shop.country === 'us' ? 'license' : 'licence'}, and the tag or confirmation number that goes with the animal.</li>
          <li>Where and when it was taken: the county or unit, and the day.</li>
        </ul>
      </section>
      <section className="section" aria-labelledby="prices">
        <h2 id="prices">What it costs</h2>
        <Prices rows={prices.base} />
        <details className="more">
          <summary>Extras</summary>
          <Prices rows={prices.extras} />
        </details>
        <p className="quiet-text">
          Hanging weight is what hangs on the rail, without hide, head and lower legs. Prices are without tax. The form works out an
          estimate for your animal.
        </p>
      </section>
      <section className="section" aria-labelledby="look-up">
        <h2 id="look-up">Is it ready?</h2>
        <p>
          Your private link shows where your animal is. You get the link when you send an order: keep it.
          {shop.phone && ` Lost it? Call the shop on ${shop.phone} and give your name or number.`}
        </p>
      </section>
      <Caution texts={[CAUTIONS['keep-cold'].text, cookingCaution(shop.cookGameTo)]} />
    </HunterPage>
  );
}

function Prices({ rows }: { readonly rows: readonly PriceWords[] }) {
  return (
    <dl className="facts prices">
      {rows.map(({ label, words }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}

function NotOpenYet() {
  return (
    <PlainPage>
      <PageHeader title="This shop is not open for orders yet" lede="It has to be set up first: its name, its prices, its owner." />
      <p>
        If you run the shop, <Link href="/setup">set it up here</Link> with the code that the console shows.
      </p>
    </PlainPage>
  );
}
