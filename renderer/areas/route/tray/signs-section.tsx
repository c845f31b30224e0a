import type { ReactNode } from 'react';
import { useBuild } from '../../../workbench';
import { Fold } from '../fold';

/** What the lines and signs of the map mean, each drawn as it is there. */
const SIGNS: readonly { readonly words: string; readonly sign: ReactNode }[] = [
  {
    words: 'Opening with a rubber grommet',
    sign: <rect x="5" y="6" width="22" height="12" rx="2" strokeWidth="4" />,
  },
  {
    words: 'Opening with a rolled edge',
    sign: (
      <>
        <rect x="4" y="4" width="24" height="16" rx="2" />
        <rect x="8" y="8" width="16" height="8" rx="1" />
      </>
    ),
  },
  { words: 'Opening with a bare edge', sign: <rect x="4" y="5" width="24" height="14" rx="2" /> },
  {
    words: 'Tie point',
    sign: (
      <>
        <circle cx="16" cy="12" r="6" />
        <path d="M7 12h18" strokeWidth="2.5" />
      </>
    ),
  },
  { words: 'Bend', sign: <path d="M16 5l7 7-7 7-7-7z" /> },
  {
    words: 'Cable end',
    sign: (
      <>
        <rect x="10" y="6" width="12" height="12" />
        <rect x="14" y="10" width="4" height="4" fill="currentColor" />
      </>
    ),
  },
  { words: 'Standoff; filled: it cannot be taken out', sign: <path d="M10 12l3-5.2h6l3 5.2-3 5.2h-6z" /> },
  { words: 'Path on the side looked at', sign: <path d="M3 12h26" strokeWidth="2" /> },
  {
    words: 'On the other side',
    sign: <path d="M3 12h26" strokeWidth="1.5" strokeDasharray="4 3" opacity="0.7" />,
  },
  {
    words: 'Cable, or a bundle as thick as it is',
    sign: <path d="M3 9h26M3 15h26" strokeWidth="1.5" />,
  },
  {
    words: 'Fan, and which way it blows',
    sign: (
      <>
        <rect x="12" y="3" width="8" height="18" rx="1" />
        <path d="M4 12h22m-4-4l4 4-4 4" strokeWidth="2" />
      </>
    ),
  },
];

/** The signs of the map beside their words. */
export function SignsSection() {
  if (useBuild().case.tray === undefined) return null;
  return (
    <Fold title="Signs on the map">
      <ul className="map-signs">
        {SIGNS.map(({ words, sign }) => (
          <li key={words}>
            <svg
              viewBox="0 0 32 24"
              width="32"
              height="24"
              fill="none"
              stroke="currentColor"
              strokeWidth="1.5"
              aria-hidden="true"
            >
              {sign}
            </svg>
            {words}
          </li>
        ))}
      </ul>
    </Fold>
  );
}
