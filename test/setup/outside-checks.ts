import type { Reporter, TestModule } from 'vitest/node';

/** Published sources, reference rows and libraries that the names of tests cite. */
const OUTSIDE =
  /RFC ?\d+|IANA|IEEE|ISO|IEC|ASTM|NEC\b|OSHA|POSIX|XDG|SemVer|CommonMark|commonmark|GFM|ipaddr|netmask|json-rules-engine|Lauritzen|Heckerman|Kadane|Good 1950|Wilson|Newcombe|Kleene|FIPS|Unicode|OASIS|CLDR|published/;

/** Says at the end what was checked against something outside the project: each suite or test that cites it, once. */
export class OutsideChecks implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const named = new Set<string>();
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const suite = test.parent.type === 'suite' ? test.parent.fullName : '';
        if (OUTSIDE.test(suite)) named.add(suite);
        else if (OUTSIDE.test(test.name)) named.add(suite === '' ? test.name : `${suite} > ${test.name}`);
      }
    }
    const lines = [...named].sort().map((name) => `  ${name.slice(0, 150)}`);
    process.stdout.write(`\nChecked against something outside (${lines.length}):\n${lines.join('\n')}\n`);
  }
}
