// A redis-server that ends with the test that started it. Its configuration comes from the environment, since
// it holds a password.
import { spawn } from 'node:child_process';

const { REDIS_CONFIG, ...env } = process.env;
const redis = spawn('redis-server', ['-'], { env, stdio: ['pipe', 'inherit', 'inherit'] });
redis.stdin.end(REDIS_CONFIG);
redis.on('exit', () => process.exit());
process.on('disconnect', () => redis.kill('SIGKILL'));
