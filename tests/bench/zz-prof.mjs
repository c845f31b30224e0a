import { domain } from './bundled/domain.mjs';
const { KNOWN, runOf, chosen, fixedOrder } = await domain('meterprof', { '/tests/boards/pinout/meter/simulated-runs.ts': ['KNOWN','runOf','chosen','fixedOrder'] });
const N = +process.argv[2] || 40; const only = process.argv[3];
let A=0,B=0,TA=0,TB=0;
for (const u of KNOWN) {
  if (only && u.id !== only) continue;
  const t0 = performance.now();
  const a = Array.from({ length: N }, (_, i) => runOf(u, 777000 + i, chosen(u)));
  const t1 = performance.now();
  const b = Array.from({ length: N }, (_, i) => runOf(u, 777000 + i, fixedOrder(u)));
  const t2 = performance.now();
  const mean = (r, f) => r.reduce((s, x) => s + f(x), 0) / r.length;
  const [ra, rb] = [mean(a, x => x.readings), mean(b, x => x.readings)];
  A += ra; B += rb; TA += t1-t0; TB += t2-t1;
  console.log(u.id.padEnd(26), 'first', mean(a, x => +x.first).toFixed(3), mean(b, x => +x.first).toFixed(3), 'sure', mean(a, x => +x.sure).toFixed(2), mean(b, x => +x.sure).toFixed(2), 'n', ra.toFixed(2), rb.toFixed(2), (ra/rb).toFixed(2), 'ms/run', ((t1 - t0) / N).toFixed(1), ((t2 - t1) / N).toFixed(1));
}
console.log('pooled', (A/B).toFixed(3), 's', (TA/1e3).toFixed(1), (TB/1e3).toFixed(1));
