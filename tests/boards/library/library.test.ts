import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gridIndex } from '../../../boards/document/numbering';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';
import { leadsSavedAndOpened, savedAndOpened } from './saved';

const PLACE = { xMm: 20, yMm: 20, turn: 0 } as const;

describe('the connectors of the library', () => {
  it('have ids of their own', () => {
    expect(new Set(CONNECTOR_TYPES.map(({ id }) => id)).size).toBe(CONNECTOR_TYPES.length);
  });

  it('are all held to a table of published pins', () => {
    const held = readdirSync(import.meta.dirname)
      .filter((file) => file.endsWith('.test.ts'))
      .flatMap((file) => [
        ...readFileSync(`${import.meta.dirname}/${file}`, 'utf8').matchAll(/^follows\('([^']+)'/gm),
      ])
      .map(([, id]) => id);
    expect(held.sort()).toEqual(CONNECTOR_TYPES.map(({ id }) => id).sort());
  });

  it.each(CONNECTOR_TYPES)('$id names its sources', ({ sources }) => {
    expect(sources.length).toBeGreaterThan(0);
  });

  it.each(CONNECTOR_TYPES)(
    '$id says of every position what it is, where that was read, and how sure',
    (type) => {
      const { grid, pins } = type.connector;
      expect(pins.map(({ pin }) => pin)).toEqual(
        gridIndex(grid)
          .positions.map(({ label }) => label)
          .sort((a, b) => Number(a) - Number(b)),
      );
      const silent = pins.filter(
        ({ signal, missing, source, confidence }) =>
          (signal === undefined) !== (missing === true) || !source?.where || confidence === undefined,
      );
      expect(silent).toEqual([]);
    },
  );

  it.each(CONNECTOR_TYPES)('$id marks as recalled exactly what is rated so', ({ connector }) => {
    for (const { confidence, source } of connector.pins)
      expect(source?.where?.includes('(from memory)')).toBe(confidence === 0.6);
  });

  it.each(CONNECTOR_TYPES)('$id is the same after saving and opening', ({ id }) => {
    const connector = makeConnector(id, { id: 'j1', print: 'J1', place: PLACE });
    expect(savedAndOpened(connector)).toEqual(connector);
  });

  it('do not make up one that is not there', () => {
    expect(() => makeConnector('panel-3x3', { id: 'j1', print: 'J1', place: PLACE })).toThrow('panel-3x3');
  });
});

describe('the leads of the library', () => {
  it('have ids of their own, and the entry’s id and title until a case gives others', () => {
    expect(new Set(LEAD_TYPES.map(({ id }) => id)).size).toBe(LEAD_TYPES.length);
    expect(LEAD_TYPES.map(({ lead }) => [lead.id, lead.name])).toEqual(
      LEAD_TYPES.map(({ id, title }) => [id, title]),
    );
  });

  it('all have a source', () => {
    expect(LEAD_TYPES.filter(({ source }) => source === '')).toEqual([]);
  });

  it('are all the same after saving and opening one case that has every one of them', () => {
    const leads = LEAD_TYPES.map(({ lead }) => lead);
    expect(leadsSavedAndOpened(leads)).toEqual(leads);
  });

  it('take the id and the name that a case gives them', () => {
    const lead = makeLead('power-led-1x3', { id: 'front-led', name: 'Front LED' });
    expect([lead.id, lead.name, lead.plugs[0]?.print]).toEqual(['front-led', 'Front LED', 'POWER LED']);
    expect(() => makeLead('power-led-1x9', { id: 'x', name: 'X' })).toThrow('power-led-1x9');
  });
});
