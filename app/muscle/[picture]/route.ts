import { noSuchFile } from '@/app/_components/turn-away';
import { DRAWN_TARGETS, muscleDrawing } from '@/lib/documents';

type Context = { readonly params: Promise<{ readonly picture: string }> };

/** The picture of where one muscle is: '/muscle/topside.svg', '/muscle/topside-dark.svg'. The same for everyone, so that a phone keeps it. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  const { picture } = await params;
  const scheme = picture.endsWith('-dark.svg') ? 'dark' : 'light';
  const target = DRAWN_TARGETS.find((id) => picture === (scheme === 'dark' ? `${id}-dark.svg` : `${id}.svg`));
  const drawing = target && muscleDrawing(target, scheme);
  if (!drawing) return noSuchFile();
  return new Response(drawing, { headers: { 'Content-Type': 'image/svg+xml; charset=utf-8', 'Cache-Control': 'public, max-age=86400' } });
}
