import { timeDrafts } from './time-drafts';

declare global {
  interface Window {
    timeDrafts?: typeof timeDrafts;
  }
}

window.timeDrafts = timeDrafts;
