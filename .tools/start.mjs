/** `npm start`: installs if need be, builds the site and serves it. `npm start -- --port 8080 --host 0.0.0.0` */
import { join } from 'node:path';
import { parseArgs } from 'node:util';

import { serve } from './serve.mjs';
import { setup } from './setup.mjs';
import { Advice, main, root, tool } from './toolchain.mjs';

await main(async () => {
  const { values } = parseArgs({
    options: {
      host: { type: 'string', default: '127.0.0.1' },
      port: { type: 'string', default: '4321' },
    },
  });
  const port = Number(values.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Advice(`--port ${values.port}: a port is a whole number from 0 to 65535.`);
  }
  await setup();
  if ((await tool('astro', ['build'])) !== 0)
    throw new Advice('The site could not be built; see above.');
  const folder = process.env.SITE_OUT ?? 'dist';
  const base = process.env.SITE_BASE;
  const { url } = await serve({ folder: join(root, folder), base, host: values.host, port });
  console.log(`\nSpeaking Length is at ${url} (Ctrl+C stops it)`);
});
