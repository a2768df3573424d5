import { noSuchFile } from '@/app/_components/turn-away';
import { pdfAnswer } from '@/lib/pdf/pdf-answer';
import { pdfFile } from '@/lib/pdf/pdf-files';
import { hunterInvoice } from '@/lib/workflows/hunter-orders';

type Context = { readonly params: Promise<{ readonly token: string }> };

/** The hunter's own invoice, by the order's private link. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const papers = await hunterInvoice((await params).token);
  if (!papers) return noSuchFile();
  const { paper, document, payments, due } = papers;
  return pdfAnswer(await pdfFile({ kind: 'invoice', paper, document, payments, due }), document.title);
}
