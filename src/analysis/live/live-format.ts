import type { Recording } from '../../recording/index.js';

/** What is known of a live signal before its first sample; `notes` may grow. */
export type LiveFormat = Pick<Recording, 'kind' | 'format' | 'sampleRateHz' | 'channels' | 'notes'>;
