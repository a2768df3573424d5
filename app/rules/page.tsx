import Link from 'next/link';
import { redirect } from 'next/navigation';
import { HunterPage } from '@/app/_components/hunter-page';
import { PageHeader } from '@/app/_components/page-header';
import { ruleIndex } from '@/lib/documents';
import { currentShop } from '@/lib/workflows/shop-settings';
import { RuleWeight } from './rule-weight';
import './rules.css';

export const metadata = { title: 'What we look for in an order' };

/** Every rule there is, under what it is about. */
export default async function RulesPage() {
  const shop = await currentShop();
  if (!shop) redirect('/');
  const groups = ruleIndex(shop.settings.ruleChanges, shop.settings.nameCountry);
  return (
    <HunterPage shop={shop.settings}>
      <PageHeader
        title="What we look for in an order"
        kicker={shop.settings.name}
        lede="The form tells you at once what does not fit. This is all it looks for, and why."
        back={{ href: '/', text: 'Front page' }}
      />
      <nav aria-label="What it is about">
        <ul className="rule-topics">
          {groups.map(({ topic, title }) => (
            <li key={topic}>
              <a href={`#${topic}`}>{title}</a>
            </li>
          ))}
        </ul>
      </nav>
      {groups.map(({ topic, title, rules }) => (
        <section className="section" key={topic} aria-labelledby={topic}>
          <h2 id={topic}>{title}</h2>
          <ul className="rule-list">
            {rules.map((rule) => (
              <li key={rule.id}>
                <h3>
                  <Link href={`/rules/${rule.id}`} prefetch={false}>
                    {rule.title}
                  </Link>
                </h3>
                <RuleWeight severity={rule.severity} words={rule.severityWords} />
                <p>{rule.line}</p>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </HunterPage>
  );
}
