import { expect, it } from 'vitest';
import { addUp } from '../../.ci/add-up.mjs';

it('adds up a report of Vitest', () => {
  const report = { numPassedTests: 7, numFailedTests: 2, numPendingTests: 1, numTodoTests: 3, testResults: [] };
  expect(addUp(report)).toEqual({ passed: 7, failed: 2, skipped: 4 });
});

it('counts a file that could not be loaded as failed', () => {
  const testResults = [
    { status: 'failed', assertionResults: [] },
    { status: 'failed', assertionResults: [{}] },
    { status: 'passed', assertionResults: [{}] },
  ];
  const report = { numPassedTests: 1, numFailedTests: 1, numPendingTests: 0, numTodoTests: 0, testResults };
  expect(addUp(report)).toEqual({ passed: 1, failed: 2, skipped: 0 });
});

it('adds up a report of Playwright: a test that passed only on repeating has failed once', () => {
  const report = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 2 }, errors: [{ message: 'no server' }] };
  expect(addUp(report)).toEqual({ passed: 5, failed: 3, skipped: 2 });
});
