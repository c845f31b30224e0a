/** Sources that disagree: two lines crossed out as equal. The words stand beside it. */
export function DisputeSign() {
  return (
    <svg className="dispute" viewBox="0 0 16 16" width={14} height={14} aria-hidden="true">
      <path d="M2.5 6h11M2.5 10h11M10.5 2.5l-5 11" />
    </svg>
  );
}
