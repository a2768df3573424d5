import type { NextConfig } from 'next';

const config: NextConfig = {
  poweredByHeader: false,
  typedRoutes: false,
  // `npm test` checks the types. A shop's start neither waits for that nor fails by it.
  typescript: { ignoreBuildErrors: true },
  experimental: { serverActions: { bodySizeLimit: '1mb' } },
};

export default config;
