import { words } from '../../words';
import { focusOn } from '../aloud/focus-on';
import { useBench } from '../store/bench';

/** One sentence about a file that was opened, saved or refused; it stays until it is put away or followed by another. */
export function NoticeStrip() {
  const notice = useBench((state) => state.notice);
  const tell = useBench((state) => state.tell);
  return (
    <div className="notice-place" role={notice?.tone === 'refused' ? 'alert' : 'status'}>
      {notice && (
        <p className="notice" data-tone={notice.tone}>
          {notice.text}
          <span className="notice-actions">
            {notice.remedies?.map(({ name, act }) => (
              <button
                key={name}
                type="button"
                className="plain-link"
                onClick={() => {
                  tell(undefined);
                  act();
                }}
              >
                {name}
              </button>
            ))}
            <button
              type="button"
              className="plain-link"
              onClick={() => {
                tell(undefined);
                focusOn('.stop[data-open] .stop-name button');
              }}
            >
              {words`dismiss`}
            </button>
          </span>
        </p>
      )}
    </div>
  );
}
