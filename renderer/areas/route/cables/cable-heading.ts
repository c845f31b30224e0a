/** The heading of the chosen cable, which the list leads on to. */
export const CABLE_HEADING = 'route-cable';
