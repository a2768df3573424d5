/** Runs once when the server starts, before it answers. */
export async function register(): Promise<void> {
  if (process.env['NEXT_RUNTIME'] !== 'nodejs') return;
  const { dropForgedAddresses } = await import('./lib/auth/client-address');
  dropForgedAddresses();
}
