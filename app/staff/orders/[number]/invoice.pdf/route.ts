import { noSuchFile } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { parseOrderNumber } from '@/lib/orders';
import { pdfAnswer } from '@/lib/pdf/pdf-answer';
import { pdfFile } from '@/lib/pdf/pdf-files';
import { invoicePapers } from '@/lib/workflows/print-papers';

type Context = { readonly params: Promise<{ readonly number: string }> };

/** The issued invoice of one animal, with what has been paid since. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const staff = await requireStaff('prices.read');
  const number = parseOrderNumber((await params).number);
  const papers = number.ok ? await invoicePapers(staff, number.value) : null;
  if (!papers) return noSuchFile();
  const { paper, document, payments, due } = papers;
  return pdfAnswer(await pdfFile({ kind: 'invoice', paper, document, payments, due }), document.title);
}
