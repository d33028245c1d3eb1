import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';

import { toolNode } from '../../.tools/toolchain.mjs';
import { root } from './imports.ts';

test('Node alone runs the physics: no build, no flag', () => {
  // University Physics Vol. 1 (OpenStax 2016), 16.3: 3.09e-4 kg/m at 427.23 m/s is pulled by 56.40 N.
  const script = `
    import { tension } from './src/physics/index.ts';
    const frequency = 329.63;
    const speakingLength = 427.23 / (2 * frequency);
    console.log(tension({ speakingLength, frequency, linearDensity: 3.09e-4 }));
  `;
  const args = ['--input-type=module', '--eval', script];
  const answer = execFileSync(toolNode(), args, { cwd: root, encoding: 'utf8' });
  expect(Number(answer)).toBeCloseTo(56.4, 2);
});

test('Node alone listens to a string: the package that it needs is plain JavaScript', () => {
  const script = `
    import { listen } from './src/physics/listen.ts';
    const sampleRate = 22050;
    const samples = Float64Array.from({ length: sampleRate }, (_, i) => {
      let sum = 0;
      for (let n = 1; n <= 8; n += 1)
        sum += Math.sin((2 * Math.PI * n * 110 * Math.sqrt(1 + 1e-4 * n * n) * i) / sampleRate) / n;
      return 0.1 * sum * Math.exp((-3 * i) / sampleRate);
    });
    console.log(listen({ samples, sampleRate }).fundamental);
  `;
  const args = ['--input-type=module', '--eval', script];
  const answer = execFileSync(toolNode(), args, { cwd: root, encoding: 'utf8' });
  expect(Number(answer)).toBeCloseTo(110, 2);
});
