import { noSuchFile } from '@/app/_components/turn-away';
import { DRAWN_TARGETS, muscleDrawing } from '@/lib/documents';

type Context = { readonly params: Promise<{ readonly picture: string }> };

/** The picture of where one muscle is: '/muscle/topside.svg'. The same for everyone, so that a phone keeps it. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const { picture } = await params;
  const target = DRAWN_TARGETS.find((id) => `${id}.svg` === picture);
  const drawing = target && muscleDrawing(target);
  if (!drawing) return noSuchFile();
  return new Response(drawing, { headers: { 'Content-Type': 'image/svg+xml; charset=utf-8', 'Cache-Control': 'public, max-age=86400' } });
}
