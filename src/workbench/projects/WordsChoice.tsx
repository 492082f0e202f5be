import { type English, isEnglish, say, words } from '../../words';
import { reloadPage } from '../faults/leaving';
import { Switch } from '../fields/Switch';
import { keepEnglish, spokenEnglish } from '../look/english';

const CHOICES: readonly { readonly key: English; readonly name: ReturnType<typeof say> }[] = [
  { key: 'british', name: say`British` },
  { key: 'american', name: say`American` },
  { key: 'canadian', name: say`Canadian` },
];

/** Whose words the page, its papers and its files use. What was said already stays, so the page is loaded anew. */
export function WordsChoice() {
  const pick = (english: string) => {
    if (!isEnglish(english)) return;
    keepEnglish(english);
    void reloadPage();
  };
  return (
    <>
      <Switch
        label={words`Words`}
        choices={CHOICES}
        chosen={spokenEnglish()}
        onPick={pick}
        describedBy="words-choice-help"
      />
      <p className="field-help" id="words-choice-help">
        {words`British: trousers, overlocker. American: pants, serger. The page loads again, and your work is kept.`}
      </p>
    </>
  );
}
