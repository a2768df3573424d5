import { cache } from 'react';
import { redirect } from 'next/navigation';
import { HunterPage } from '@/app/_components/hunter-page';
import { PageHeader } from '@/app/_components/page-header';
import { nothingHere } from '@/app/_components/turn-away';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { type RulePage as RuleOnPage, rulePage } from '@/lib/documents';
import { currentShop } from '@/lib/workflows/shop-settings';
import { RuleWeight } from '../rule-weight';
import '../rules.css';

const ruleHere = cache(async (id: string) => {
  const shop = await currentShop();
  if (!shop) return null;
  const { ruleChanges: changes, nameCountry: country, unit } = shop.settings;
  return { shop: shop.settings, rule: rulePage(id, { changes, words: { country, unit }, book: PUBLISHED_SPECIES }) };
});

export async function generateMetadata({ params }: PageProps<'/rules/[id]'>) {
  return { title: (await ruleHere((await params).id))?.rule?.title ?? null };
}

/** One rule: why it is there, when it is looked at, what it says, and what can be done about it. */
export default async function RulePage({ params }: PageProps<'/rules/[id]'>) {
  const here = await ruleHere((await params).id);
  if (!here) redirect('/');
  const { shop, rule } = here;
  if (!rule) nothingHere('public');
  return (
    <HunterPage shop={shop}>
      <PageHeader title={rule.title} kicker={rule.topic} back={{ href: '/rules', text: 'All we look for' }} />
      <RuleWeight severity={rule.severity} words={rule.severityWords} />
      {rule.softened && (
        <p className="notice">
          {rule.softened.sentence} It says why: “{rule.softened.reason}”
        </p>
      )}
      <section className="section stack" aria-labelledby="why">
        <h2 id="why">Why</h2>
        <p className="rule-why">{rule.why}</p>
        <p className="quiet-text">Source: {rule.source}</p>
      </section>
      <section className="section stack" aria-labelledby="when">
        <h2 id="when">When</h2>
        <p>{rule.askedWhen}</p>
        {rule.ground && <p>{rule.ground}</p>}
      </section>
      <Examples rule={rule} />
    </HunterPage>
  );
}

function Examples({ rule: { examples, noWayBecause } }: { readonly rule: RuleOnPage }) {
  return (
    <section className="section stack" aria-labelledby="example">
      <h2 id="example">{noWayBecause === null ? 'What it says, and what can be done' : 'What it says'}</h2>
      <ul className="rule-examples">
        {examples.map(({ animal, message, ways }, at) => (
          <li className="stack" key={message}>
            {animal !== examples[at - 1]?.animal && <p className="quiet-text">For example of this animal: {animal}.</p>}
            <blockquote className="panel">{message}</blockquote>
            {ways.length > 0 && (
              <dl className="rule-ways">
                {ways.map(({ label, consequence }) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd>{consequence}</dd>
                  </div>
                ))}
              </dl>
            )}
          </li>
        ))}
      </ul>
      {noWayBecause !== null && <p>{noWayBecause}</p>}
    </section>
  );
}
