/** What a file may hold. Checked before anything is built from it; each has a test at the limit and one past it. */
export const LIMITS = {
  fileBytes: 32 * 1024 * 1024,
  depth: 64,
  idLength: 64,
  textLength: 200,
  noteLength: 10_000,
  schemaAddressLength: 2_000,
  gridSide: 64,
  connectors: 2_000,
  mountingHoles: 64,
  /** Positions of all connectors of a board together. */
  pins: 20_000,
  leads: 2_000,
  plugsPerLead: 64,
  partsPerLead: 64,
  wiresPerLead: 1_024,
  /** Holes of all plugs of a case or a build together. */
  holes: 20_000,
  /** Wires of all leads of a case or a build together. */
  wires: 20_000,
  seats: 10_000,
  /** Steps of the work that are ticked off. */
  stepsDone: 30_000,
  stepLength: 400,
  /** Lines of the log of a machine that does not start. */
  logEntries: 2_000,
  codeLength: 80,
  remarkLength: 1_000,
  /** Causes of trouble that a build weighs in its own way. */
  priors: 200,
  alternativesPerPin: 8,
  valuesPerPin: 8,
  readingsPerConnector: 512,
  photos: 8,
  /** The longer side of a photo, in pixels. */
  photoSidePx: 2_000,
  /** Letters of base64 of one photo: 3 MB of picture. */
  photoLength: 4 * 1024 * 1024,
  /** Letters of base64 of all photos together, so that the rest of a file has room beside them. */
  photosLength: 24 * 1024 * 1024,
  pointsPerPhoto: 1_024,
  trayPoints: 2_000,
  trayOpenings: 64,
  trayBays: 64,
  trayStandoffs: 64,
  trayFans: 64,
  trayPaths: 10_000,
  drivePlaces: 16,
  choices: 1_000,
  units: 64,
  connectorsPerUnit: 64,
  routes: 10_000,
  pathsPerRoute: 256,
  problemsShown: 20,
  /** Where counting stops: a file with more is not read on. */
  problemsCounted: 1_000,
} as const;
