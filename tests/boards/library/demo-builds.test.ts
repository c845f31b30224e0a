import { describe, expect, it } from 'vitest';
import type { FindingCode } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { LEADS, slips, wired } from './demo-files';

describe('the wired build', () => {
  it('has every lead seated where it fits, nothing hanging over', () => {
    expect(wired.seats.map(({ lead }) => lead)).toEqual(Object.keys(LEADS));
    const fits = wired.seats.map((seat) => fitSeat(wired, seat));
    expect(fits.flatMap(({ refusals }) => refusals)).toEqual([]);
    expect(fits.flatMap(({ overhang }) => overhang)).toEqual([]);
  });

  it('has nothing dangerous or wrong, and doubts only about pins', () => {
    const found = findingsOf(wired);
    expect(found.length).toBeGreaterThan(0);
    const told = new Set(found.map(({ code, severity }) => `${severity} ${code}`));
    expect(told).toEqual(new Set(['doubt pin-unsure', 'note standby-overload']));
  });
});

describe('the build with eight slips', () => {
  it('has every plug where it really goes in', () => {
    expect(slips.seats.flatMap((seat) => fitSeat(slips, seat).refusals)).toEqual([]);
  });

  it.each<[slip: string, code: FindingCode, lead: string]>([
    ['power and reset exchanged', 'switches-exchanged', 'power-switch'],
    ['the drive LED one column too far', 'shifted', 'drive-led'],
    ['the power LED turned round', 'reversed', 'power-led'],
    ['the USB lead on 1394', 'usb-on-1394', 'front-usb'],
    ['and the 1394 lead on USB', 'ieee1394-on-usb', 'front-1394'],
    ['the card reader turned end for end', 'supply-reversed', 'card-reader'],
    ['the CPU fan a pin too far', 'fan-supply-on-signal', 'cpu-fan'],
    ['the case-open lead on the clear jumper', 'on-clear-settings', 'case-open'],
    ['and the cap on the case-open pins', 'input-held', 'clear-cap'],
    ['the front audio lead on the shelf', 'lead-left-over', 'front-audio'],
  ])('%s is found as %s', (_slip, code, lead) => {
    const found = findingsOf(slips).filter((finding) => finding.code === code);
    expect(found.some(({ leads }) => leads.includes(lead))).toBe(true);
  });

  it('seats right what is not among the slips', () => {
    const right = slips.seats.filter((seat) =>
      wired.seats.some((other) => JSON.stringify(other) === JSON.stringify(seat)),
    );
    expect(right.map(({ lead }) => lead)).toEqual(['speaker', 'front-usb3', 'rear-fan']);
  });
});
