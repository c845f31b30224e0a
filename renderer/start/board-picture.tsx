const PINS = [0, 1, 2, 3, 4];

/** A header with one plug on its way: the job of the program in a picture. */
export function BoardPicture() {
  return (
    <svg className="start-picture" viewBox="0 0 220 84" width="220" height="84" aria-hidden="true">
      <path className="picture-shell" d="M14 20h112v56H8V26z" />
      {PINS.map((col) => (
        <g key={col}>
          <rect className="picture-pin" x={16 + col * 22} y="28" width="14" height="14" />
          <rect
            className={col === 4 ? 'picture-gap' : 'picture-pin'}
            x={16 + col * 22}
            y="54"
            width="14"
            height="14"
          />
        </g>
      ))}
      <rect className="picture-plug" x="57" y="49" width="42" height="24" rx="3" />
      <path className="picture-wire picture-wire-red" d="M67 61H150l16-30h46" />
      <path className="picture-wire picture-wire-black" d="M89 67h65l18-28h40" />
    </svg>
  );
}
