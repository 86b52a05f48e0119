import { defineConfig } from 'rolldown';

/** Node's own modules stay outside; everything else goes into the bundle, so the command starts fast. */
export default defineConfig({
  input: {
    whydark: 'src/cli/whydark.ts',
    'build/pack-rules': 'src/build/pack-rules.ts',
    'build/demo': 'src/build/demo.ts',
  },
  platform: 'node',
  resolve: { extensionAlias: { '.js': ['.ts', '.js'] } },
  output: {
    dir: 'dist',
    cleanDir: true,
    format: 'esm',
    entryFileNames: '[name].js',
    chunkFileNames: 'chunks/[name]-[hash].js',
  },
});
