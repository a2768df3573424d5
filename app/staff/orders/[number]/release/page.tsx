import { FindingCards } from '@/app/staff/_components/finding-cards';
import { OrderPage } from '@/app/staff/_components/order-page';
import { formatMoney } from '@/lib/units';
import { antlerChoices, chosenLabel } from '@/lib/forms';
import { hasStop } from '@/lib/rules';
import { openOrder } from '../open-order';
import { ReleaseForm } from './release-form';

export const metadata = { title: null };

/** Handing the animal over: who takes it, and that everything of it goes along. */
export default async function ReleasePage({ params }: PageProps<'/staff/orders/[number]/release'>) {
  const { order } = await openOrder((await params).number, 'order.release', 'release');
  const { invoice, bill, shop, instructions, arrival } = order;
  const isReady = order.steps.includes('hand-over');
  const due = invoice?.dueMinor ?? 0;
  const findings = isReady ? order.assessment.findings : [];
  const mayGo = isReady && due <= 0 && !hasStop(findings);
  const { keep } = instructions;
  const kept = (['heart', 'liver', 'bones'] as const).filter((item) => keep[item]);
  const isKept = (lineKey: string): boolean => lineKey.startsWith('keep:');
  const packages = order.weighings.filter(({ lineKey }) => !isKept(lineKey)).reduce((sum, one) => sum + one.packages, 0);
  const weighedOf = (item: string): boolean => order.weighings.some(({ lineKey, grams }) => lineKey === `keep:${item}` && grams > 0);
  const along = [
    `${packages} ${packages === 1 ? 'package' : 'packages'} of meat`,
    ...kept.map((item) => (weighedOf(item) ? item : `${item}: wanted, but none was weighed`)),
    ...(keep.antlers === 'none' ? [] : [chosenLabel(antlerChoices(), keep.antlers)]),
    ...(keep.cape ? ['the cape'] : []),
  ];
  return (
    <OrderPage order={order} task="Hand it over" hasForm={mayGo}>
      {!isReady && <p className="notice stop">This animal is {order.stateWords}; it is handed over once its invoice is issued.</p>}
      <FindingCards findings={findings} />
      {isReady && due > 0 && bill && (
        <div className="notice stop">
          <p>
            <b>{formatMoney(due, bill.currency, shop.locale)} is still due.</b> Nothing leaves before it is paid.
          </p>
          <p>
            <a className="button primary" href={`/staff/orders/${order.number}/bill#pay`}>
              Take the payment
            </a>
          </p>
        </div>
      )}
      {mayGo && (
        <div className="split">
          <ReleaseForm
            order={{ number: order.number, version: order.version }}
            title={`Hand it over · ${order.numberText}`}
            hunterName={order.hunter.name}
            tag={arrival?.tag ?? ''}
          />
          <section className="panel" aria-labelledby="along">
            <h2 id="along">What goes along</h2>
            <ul>
              {along.map((item) => (
                <li key={item}>{item}</li>
              ))}
            </ul>
          </section>
        </div>
      )}
    </OrderPage>
  );
}
