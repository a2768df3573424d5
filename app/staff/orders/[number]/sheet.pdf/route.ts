import { noSuchFile } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { parseOrderNumber } from '@/lib/orders';
import { pdfAnswer } from '@/lib/pdf/pdf-answer';
import { pdfFile } from '@/lib/pdf/pdf-files';
import { cuttingSheets } from '@/lib/workflows/print-papers';

type Context = { readonly params: Promise<{ readonly number: string }> };

/** The cutting sheet of one animal. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const staff = await requireStaff('sheet.print');
  const number = parseOrderNumber((await params).number);
  if (!number.ok) return noSuchFile();
  const { paper, sheets } = await cuttingSheets(staff, [number.value]);
  const [sheet] = sheets;
  if (!sheet) return noSuchFile();
  return pdfAnswer(await pdfFile({ kind: 'sheets', paper, sheets: [sheet] }), `sheet ${sheet.number} version ${sheet.version}`);
}
