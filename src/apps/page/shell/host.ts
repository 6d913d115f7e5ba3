/** Recorded as `tool.host`: no name of a browser, so that results of different devices stay equal. */
export const HOST_NAME = 'browser';
