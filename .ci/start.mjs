/** `npm start`: from a fresh clone to the running page. */
import { installPackages, run } from './install.mjs';
import { serve } from './serve.mjs';

await installPackages();
if (run('npx', ['vite', 'build', '--logLevel', 'warn']) !== 0) process.exit(1);
const { address } = await listen(Number(process.env.PORT ?? 4173));
console.log(`\nCrestwise runs at ${address}   (Ctrl-C ends it)`);

async function listen(port) {
  try {
    return await serve(port);
  } catch (error) {
    if (error.code !== 'EADDRINUSE') throw error;
    return serve(0);
  }
}
