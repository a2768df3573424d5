import { noSuchFile } from '@/app/_components/turn-away';
import { requireStaff } from '@/lib/auth/current-staff';
import { parseOrderNumber } from '@/lib/orders';
import { pdfAnswer } from '@/lib/pdf/pdf-answer';
import { pdfFile } from '@/lib/pdf/pdf-files';
import { cuttingSheets } from '@/lib/workflows/print-papers';

/** Several cutting sheets in one file, in the order asked: `?numbers=104277,104285`, or `numbers` more than once. */
export async function GET(request: Request): Promise<Response> {
  const staff = await requireStaff('sheet.print');
  const asked = new URL(request.url).searchParams.getAll('numbers').flatMap((text) => text.split(','));
  const numbers = asked.map(parseOrderNumber).flatMap((number) => (number.ok ? [number.value] : []));
  const { paper, sheets } = await cuttingSheets(staff, [...new Set(numbers)]);
  if (sheets.length === 0) return noSuchFile();
  return pdfAnswer(await pdfFile({ kind: 'sheets', paper, sheets }), `sheets ${sheets.length}`);
}
