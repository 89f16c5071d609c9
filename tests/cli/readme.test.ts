import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import printCommand from '../../cli/commands/print.js';
import { everythingIn, inFolder, trialpiece } from './program.js';

const ROOT = new URL('../../', import.meta.url).pathname;
const readme = readFileSync(`${ROOT}README.md`, 'utf8');
const ownPart = /```ts\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';

describe("the README's part of one's own", () => {
  it('has under 60 lines', () => {
    expect(ownPart.split('\n').length).toBeGreaterThan(20);
    expect(ownPart.trimEnd().split('\n').length).toBeLessThan(60);
  });

  it('agrees with the types', () => {
    const options = ts.convertCompilerOptionsFromJson(
      { strict: true, exactOptionalPropertyTypes: true, noUncheckedIndexedAccess: true, target: 'ES2022', module: 'NodeNext', noEmit: true, skipLibCheck: true, types: [], paths: { trialpiece: [`${ROOT}engine/part/author/index.ts`] } },
      ROOT,
    ).options;
    const host = ts.createCompilerHost(options);
    const name = `${ROOT}drop-link.ts`;
    const { getSourceFile, fileExists } = host;
    host.fileExists = (path) => path === name || fileExists(path);
    host.getSourceFile = (path, ...more) => (path === name ? ts.createSourceFile(path, ownPart, ts.ScriptTarget.ES2022) : getSourceFile(path, ...more));
    const program = ts.createProgram([name], options, host);
    const source = program.getSourceFile(name);
    const messages = ts.getPreEmitDiagnostics(program, source).map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
    expect(messages).toEqual([]);
  });

  it('prints, outside the checkout', () =>
    inFolder({ 'drop-link.ts': ownPart }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'print', './drop-link.ts', '--out', 'prints');
      expect(stderr).toBe('');
      expect(status).toBe(0);
      const written = stdout.trim().split('\n').sort();
      expect(everythingIn(folder)).toEqual(['drop-link.ts', 'prints', ...written]);
      for (const ending of ['.svg', '.pdf', '.json']) expect(written.some((path) => path.endsWith(ending))).toBe(true);
    }));
});

it('the README tells every option of print', () => {
  for (const option of Object.keys(printCommand.options)) expect(readme).toContain(`| \`--${option}`);
});

it("the README's shop file is in order", () =>
  inFolder({ 'shop.yaml': /```yaml\n([\s\S]*?)```/.exec(readme)?.[1] ?? '- none' }, (folder) => {
    const { status, stdout, stderr } = trialpiece(folder, 'shop', 'check');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^drills +\d+: #60; /m);
  }));
