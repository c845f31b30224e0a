import { ChevronLeft, ChevronRight } from 'lucide-react';
import type { PaperSize } from '../../../boards/handover/page/paper';
import { paperProblemWords } from '../../../boards/handover/paper-problem-words';
import { IconButton } from '../../look/button';
import type { PagePicture } from './use-page-picture';

interface PageViewProps {
  readonly picture: PagePicture;
  /** Of the room that is kept for a page. */
  readonly shape: Pick<PaperSize, 'widthMm' | 'heightMm'>;
  /** What it is a page of. */
  readonly of: string;
  readonly page: number;
  readonly onTurnTo: (page: number) => void;
}

/** One page as it will be printed, and the way to the others. The sheet's room is the same for all of them. */
export function PageView({ picture, shape, of, page, onTurnTo }: PageViewProps) {
  const { address, pages, problem, drawing } = picture;
  const { widthMm, heightMm } = shape;
  const where = pages === 0 ? 'Page' : `Page ${page} of ${pages}`;
  const words = problem && paperProblemWords(problem);
  return (
    <section className="page-view" aria-label="Preview">
      <div className="page-sheet">
        {address === null ? (
          <div className="page-blank" style={{ aspectRatio: `${widthMm} / ${heightMm}` }}>
            {words && (
              <p className="field-problem">
                {words.line} {words.advice}
              </p>
            )}
          </div>
        ) : (
          <img className="page-picture" src={address} alt={`${where} of ${of}, as it will be printed`} />
        )}
      </div>
      <div className="page-turner">
        <IconButton
          label="Page before"
          icon={<ChevronLeft size={18} aria-hidden="true" />}
          disabled={page <= 1}
          onPress={() => onTurnTo(page - 1)}
        />
        <p className="small page-where" role="status">
          {drawing ? `${where}, being drawn …` : where}
        </p>
        <IconButton
          label="Next page"
          icon={<ChevronRight size={18} aria-hidden="true" />}
          disabled={page >= pages}
          onPress={() => onTurnTo(page + 1)}
        />
      </div>
    </section>
  );
}
