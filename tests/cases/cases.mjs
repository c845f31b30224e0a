import { existsSync, readFileSync } from 'node:fs';
import { domain } from '../bench/bundled/domain.mjs';

/**
 * Where the true cause of told troubles stands among the suspects, from what was noticed alone; a bare case
 * stands on the wired build of the demo.
 *
 * npm run cases [-- file.json]   a list of { id, cause_class, symptom_codes, root_cause_confirmed, settled_by? }
 */
const OWN = new URL('told-troubles.json', import.meta.url);
const DEMO = new URL('../../boards/library/demo/wired.build.json', import.meta.url);
const FIVE_AIM = 0.8;
const THREE_AIM = 0.65;
const SETTLED_AIM = 0.7;
const DRAWS = 20;
const SEED = 1;

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
  const { dictionaryOf, faultsOf, ranksOf, settledOf, settledWithin, shaken, shareWithin, trialsOf } =
    await domain('cases', {
      '/boards/diagnosis/faults/faults.ts': ['faultsOf'],
      '/boards/diagnosis/dictionary.ts': ['dictionaryOf'],
      '/boards/diagnosis/trials/trials.ts': ['trialsOf'],
      '/tests/cases/ranks.ts': ['ranksOf', 'shareWithin'],
      '/tests/cases/settled.ts': ['settledOf', 'settledWithin'],
      '/tests/cases/shaken.ts': ['shaken'],
    });
  const began = performance.now();
  const build = JSON.parse(readFileSync(DEMO, 'utf8'));
  const faults = faultsOf(build);
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
  const settled = settledOf(dictionary, list, trialsOf(build));
  if (settled.length > 0) {
    console.log('\nplace  by                        case                 first trials');
    for (const { id, by, rank, trial, first, stopped } of settled) {
      const told = rank > 0 && !by.includes(trial) ? `${by[0]} (${trial})` : by[0];
      console.log(
        `${`${rank || '–'}${stopped ? ' stop' : ''}`.padEnd(7)}${told.padEnd(26)}${String(id).padEnd(21)}${first.join(', ')}`,
      );
    }
    console.log(
      `\n${settled.length} tell what settled them; in those marked stop nothing is started any more. Of the others that trial, or a cheaper one in brackets that separates as well, among the first three: ` +
        `${(100 * settledWithin(settled, 3)).toFixed(0)} % (aim ${100 * SETTLED_AIM} %).`,
    );
  }
  const draws = shaken(faults, list, trialsOf(build), { draws: DRAWS, seed: SEED });
  const spread = (value) => {
    const all = draws.map((draw) => 100 * value(draw));
    return `${(all.reduce((sum, each) => sum + each, 0) / all.length).toFixed(0)} % (least ${Math.min(...all).toFixed(0)} %)`;
  };
  console.log(
    `With the weight of each cause drawn between a third and three times, ${DRAWS} draws: among three ${spread(({ three }) => three)}; ` +
      `among five ${spread(({ five }) => five)}${settled.length > 0 ? `; settling trial ${spread((draw) => draw.settled)}` : ''}.`,
  );
  console.log(`${faults.length} faults of the demo build predicted in ${(tookMs / 1000).toFixed(1)} s.`);
}
