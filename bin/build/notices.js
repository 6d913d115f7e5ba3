// Writes the notices of all packages whose code lies within dist, into dist/NOTICES.txt.
import { writeFileSync } from 'node:fs';
import { noticesOf } from './bundled.js';

writeFileSync('dist/NOTICES.txt', noticesOf());
