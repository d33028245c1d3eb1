/** A reporter of the tests that passed only at a later try, so that none of them is overlooked; RETRIED names a file for them. */
import { appendFileSync } from 'node:fs';

export default class Retried {
  #found = [];

  onTestCaseResult(test) {
    const { flaky, retryCount } = test.diagnostic() ?? {};
    if (!flaky) return;
    const [first] = test.result().errors ?? [];
    const why = (first?.message ?? '').split('\n')[0].slice(0, 200);
    const file = test.module.relativeModuleId;
    this.#found.push(`${file} > ${test.fullName} (try ${retryCount + 1}): ${why}`);
  }

  onTestRunEnd() {
    if (this.#found.length === 0) return;
    console.log(`Passed at a later try only: ${this.#found.length}`);
    for (const each of this.#found) console.log(`  ${each}`);
    const { RETRIED } = process.env;
    if (RETRIED) appendFileSync(RETRIED, this.#found.map((each) => `${each}\n`).join(''));
  }
}
