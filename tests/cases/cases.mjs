import { existsSync, readFileSync } from 'node:fs';
import { domain } from '../bench/bundled/domain.mjs';

/**
 * Where the true cause of told troubles stands among the suspects, from what was noticed alone; a bare case
 * stands on the wired build of the demo.
 *
 * npm run cases [-- file.json]   a list of { id, cause_class, symptom_codes, root_cause_confirmed }
 */
const OWN = new URL('told-troubles.json', import.meta.url);
const DEMO = new URL('../../boards/library/demo/wired.build.json', import.meta.url);
const FIVE_AIM = 0.8;
const THREE_AIM = 0.65;

const named = process.argv[2];
const troubles = listOf(named ?? OWN);
if (troubles) print(troubles);
else {
  console.error(
    `${named}: expected a list of { id, cause_class, symptom_codes, root_cause_confirmed } in JSON.`,
  );
  process.exitCode = 2;
}

function listOf(file) {
  if (!existsSync(file)) return undefined;
  try {
    const list = JSON.parse(readFileSync(file, 'utf8'));
    const fits = (each) => typeof each?.cause_class === 'string' && Array.isArray(each.symptom_codes);
    return Array.isArray(list) && list.every(fits) ? list : undefined;
  } catch {
    return undefined;
  }
}

async function print(list) {
  const { dictionaryOf, faultsOf, ranksOf, shareWithin } = await domain('cases', {
    '/boards/diagnosis/faults/faults.ts': ['faultsOf'],
    '/boards/diagnosis/dictionary.ts': ['dictionaryOf'],
    '/tests/cases/ranks.ts': ['ranksOf', 'shareWithin'],
  });
  const began = performance.now();
  const faults = faultsOf(JSON.parse(readFileSync(DEMO, 'utf8')));
  const dictionary = dictionaryOf(faults);
  const tookMs = performance.now() - began;
  const ranks = ranksOf(dictionary, list);
  console.log('rank  cause                       case                 first suspects');
  for (const { id, cause, rank, counts, first, unknownCodes } of ranks) {
    const place = `${rank === 0 ? '–' : rank}${counts ? '' : ' ?'}`;
    const words = first.map((each) => `${each.cause} ${Math.round(100 * each.chance)} %`).join(', ');
    console.log(`${place.padEnd(6)}${cause.padEnd(28)}${String(id).padEnd(21)}${words}`);
    if (unknownCodes.length > 0) console.log(`      unknown: ${unknownCodes.join(', ')}`);
  }
  const counting = ranks.filter(({ counts }) => counts).length;
  const share = (places) => `${(100 * shareWithin(ranks, places)).toFixed(0)} %`;
  console.log(
    `\n${ranks.length} cases, ${counting} settled with something noticed (the others are marked ?).`,
  );
  console.log(
    `True cause first: ${share(1)}; among three: ${share(3)} (aim ${100 * THREE_AIM} %); among five: ${share(5)} (aim ${100 * FIVE_AIM} %).`,
  );
  console.log(`${faults.length} faults of the demo build predicted in ${(tookMs / 1000).toFixed(1)} s.`);
}
