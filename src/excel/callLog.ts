/**
 * Calls of our functions by Excel, seen from inside the shared runtime: the only trustworthy sign that a
 * recalculation still goes on, because Excel shows the old value until the new one has come.
 */
export const callLog = { calls: 0, last: 0 };

export const noteCall = (): void => {
  callLog.calls += 1;
  callLog.last = Date.now();
};
