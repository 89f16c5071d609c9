import type { Reporter, TestModule } from 'vitest/node';

/**
 * Ends the run with one plain line of counts. Where `CI` is set a skipped test counts as a failure: a machine that lacks
 * the browser or the system tools must not pass for want of looking.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const inState = (state: string) => tests.filter((test) => test.result().state === state);
    const skipped = inState('skipped');
    console.log(
      `Tests: ${String(inState('passed').length)} passed, ${String(inState('failed').length)} failed, ${String(skipped.length)} skipped`,
    );
    if (process.env['CI'] && skipped.length > 0) {
      for (const test of skipped) console.error(`skipped, which CI does not allow: ${test.fullName}`);
      process.exitCode = 1;
    }
  }
}
