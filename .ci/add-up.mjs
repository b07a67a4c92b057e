/** Passed, failed and skipped tests of one JSON report, of Vitest or of Playwright. */
export function addUp(report) {
  if (report.stats !== undefined) {
    const { expected, unexpected, flaky, skipped } = report.stats;
    // A test that passed only when repeated has failed once: it counts as failed. So does an error outside any test.
    return { passed: expected, failed: unexpected + flaky + (report.errors?.length ?? 0), skipped };
  }
  // A file that could not be loaded has no tests of its own to count.
  const broken = (report.testResults ?? []).filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
