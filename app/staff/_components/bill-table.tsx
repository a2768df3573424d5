import { type Bill, formatBasis } from '@/lib/pricing';
import { formatMoney } from '@/lib/units';

/** A bill, every amount with the weight, count and rate it came from. */
export function BillTable({ bill, locale }: { readonly bill: Bill; readonly locale: string }) {
  const money = (minor: number): string => formatMoney(minor, bill.currency, locale);
  return (
    <table className="bill">
      <caption className="visually-hidden">What it comes to, line by line</caption>
      <thead>
        <tr>
          <th scope="col">For</th>
          <th scope="col" className="num">
            Amount
          </th>
        </tr>
      </thead>
      <tbody>
        {bill.lines.map((line) => (
          <tr key={line.id}>
            <th scope="row">
              {line.label}
              <span className="basis">{formatBasis(line.basis, bill.currency, locale)}</span>
            </th>
            <td className="num nowrap">{money(line.amountMinor)}</td>
          </tr>
        ))}
        {bill.taxes.map((tax) => (
          <tr key={tax.taxId}>
            <th scope="row">
              {tax.name}
              <span className="basis">
                {tax.ratePer100k / 1_000}% on {money(tax.taxableMinor)}
              </span>
            </th>
            <td className="num nowrap">{money(tax.amountMinor)}</td>
          </tr>
        ))}
      </tbody>
      <tbody>
        <tr className="total">
          <th scope="row">Total</th>
          <td className="num nowrap">{money(bill.totalMinor)}</td>
        </tr>
        {bill.paidMinor > 0 && (
          <>
            <tr>
              <th scope="row">Paid</th>
              <td className="num nowrap">{money(bill.paidMinor)}</td>
            </tr>
            <tr className="total">
              <th scope="row">Due</th>
              <td className="num nowrap">{money(bill.dueMinor)}</td>
            </tr>
          </>
        )}
      </tbody>
    </table>
  );
}
