/** Type-checks every room with its own tsconfig, so that a room can only see what it may use. */
import { spawnSync } from 'node:child_process';

const ROOMS = ['shared', 'src/script', 'src/sidebar', 'src/preview', 'src/generate', 'tests'];

let failed = false;
for (const room of ROOMS) {
  const run = spawnSync('npx', ['tsc', '-p', `${room}/tsconfig.json`], { stdio: 'inherit' });
  if (run.status !== 0) {
    failed = true;
    console.error(`types: ${room} failed`);
  }
}
if (failed) process.exit(1);
console.log(`types: ${ROOMS.length} rooms checked`);
