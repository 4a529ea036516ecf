// Prints "PASSED FAILED" from a JSON report of vitest and the exit code it ended with.
import { readFileSync } from "node:fs";

const [file, ended] = process.argv.slice(2);
const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, "utf8"));
// A file that could not even be loaded has no tests to fail.
const unloaded = testResults.filter(
  ({ status, assertionResults }) => status === "failed" && !assertionResults.some((test) => test.status === "failed"),
).length;
const failed = numFailedTests + unloaded;
// An error outside any test, or no test at all, is a failure too.
const silent = failed === 0 && (ended !== "0" || numPassedTests === 0) ? 1 : 0;
console.log(`${numPassedTests} ${failed + silent}`);
