import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'rolldown';

const resolve = { extensionAlias: { '.js': ['.ts', '.js'] } };
/** A call opens no editor, and what guesses the encoding of an edited file is half of what has to load. */
const alias = {
  '@inquirer/external-editor': new URL('src/cli/prompts/no-editor.ts', import.meta.url).pathname,
};

/** The licences of all that the bundle brings along have to travel with it. */
const notices = {
  name: 'notices',
  generateBundle(_, bundle) {
    const folders = Object.values(bundle)
      .flatMap((chunk) => chunk.moduleIds ?? [])
      .flatMap((id) => /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1] ?? []);
    const source = [...new Set(folders)].sort().map(noticeOf).join('\n\n');
    this.emitFile({ type: 'asset', fileName: 'LICENSES.txt', source: `${source}\n` });
  },
};

function noticeOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
  const text =
    file !== undefined && existsSync(join(folder, file)) ? readFileSync(join(folder, file), 'utf8') : license;
  return `${name} ${version} (${license})\n\n${text.trim()}`;
}

export default defineConfig([
  {
    // Node's own modules stay outside; everything else goes into the bundle, so the command starts fast.
    input: {
      whydark: 'src/cli/whydark.ts',
      'build/pack-rules': 'src/build/pack-rules.ts',
      'build/pack-page': 'src/build/pack-page.ts',
      'build/demo': 'src/build/demo.ts',
    },
    platform: 'node',
    // Only the build itself runs it.
    external: ['vite'],
    resolve: { ...resolve, alias },
    plugins: [notices],
    output: {
      dir: 'dist',
      cleanDir: true,
      minify: true,
      format: 'esm',
      entryFileNames: '[name].js',
      chunkFileNames: 'chunks/[name]-[hash].js',
    },
  },
  {
    // The engine for others to build on: no Node module in it, as the platform says.
    input: {
      call: 'src/call/call.ts',
      screen: 'src/call/screen.ts',
      'ticket-of': 'src/call/ticket-of.ts',
      'answers-file': 'src/call/answers-file.ts',
      topics: 'src/call/topics.ts',
    },
    platform: 'browser',
    resolve,
    plugins: [notices],
    output: {
      dir: 'dist/lib',
      format: 'esm',
      entryFileNames: '[name].js',
      chunkFileNames: 'chunks/[name]-[hash].js',
    },
  },
]);
