import { AnswerList } from '@/app/_components/answer-list';
import { orderAnswers } from '@/lib/forms';
import type { HunterOrder } from '@/lib/workflows/hunter-orders';

/** What was ordered, and until when it can be changed. */
export function OrderAnswers({ order, token }: { readonly order: HunterOrder; readonly token: string }) {
  const groups = orderAnswers(order.values, order.shop).map(({ section, title, answers }) => ({
    section,
    title: section === 'who' ? 'Besides' : title,
    answers: answers.filter(({ isPrivate }) => !isPrivate),
  }));
  return (
    <section className="section" aria-labelledby="ordered">
      <h2 id="ordered">What you ordered</h2>
      {order.isChangeable ? (
        <>
          <p>You can change all of it until the knife starts.</p>
          <div className="buttons">
            <a className="button plain" href={`/o/${encodeURIComponent(token)}/change`}>
              Change the order
            </a>
          </div>
        </>
      ) : (
        <p>It is cut by these instructions; they cannot be changed here any more. Ask the shop.</p>
      )}
      {groups.map(({ section, title, answers }) => (
        <section key={section} aria-labelledby={`ordered-${section}`}>
          <h3 id={`ordered-${section}`}>{title}</h3>
          <AnswerList answers={answers} look="facts" />
        </section>
      ))}
    </section>
  );
}
