// Ends this process when the test that started it is gone, however that ended: nothing is left behind.
process.on('disconnect', () => process.kill(process.pid, 'SIGKILL'));
process.channel?.unref();
