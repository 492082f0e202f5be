import { useId } from 'react';
import { formatLength } from '../../length';
import { DRAWING_UNITS, type DrawnSheet, isBlockSize, outlineReach, unreadTold } from '../../trace';
import { inTurn, own, type Phrase, said, say, words } from '../../words';
import { useBench } from '../store/bench';
import { type Part, setUnit, useOutlines } from './outlines-store';

type DrawingUnit = keyof typeof DRAWING_UNITS;
const UNIT_NAMES: Readonly<Record<DrawingUnit, Phrase>> = {
  mm: say`Millimetres`,
  cm: say`Centimetres`,
  in: say`Inches`,
  pt: say`Points, 1/72 in`,
  px: say`Pixels, 1/96 in`,
};
const UNITS = Object.keys(DRAWING_UNITS) as readonly DrawingUnit[];
const PART_NAMES: readonly (readonly [Part, Phrase])[] = [
  ['front', say`Front`],
  ['back', say`Back`],
];

/** Which outline is which block, and how large the drawing is. */
export function PickPanel({ sheet }: { readonly sheet: DrawnSheet }) {
  const work = useOutlines((state) => state.work);
  const picking = useOutlines((state) => state.picking);
  const both = work.front !== undefined && work.back !== undefined;
  return (
    <>
      <p className="field-help">
        {sheet.picked
          ? words`Two outlines look like a front and a back. Look whether they are the right way round.`
          : words`Press the outline of your front block, then that of the back.`}
        {sheet.unread > 0 && ` ${said(inTurn(unreadTold(sheet.unread)))}`}
      </p>
      <fieldset className="group">
        <legend>{words`The next press is the`}</legend>
        {PART_NAMES.map(([part, name]) => (
          <button
            key={part}
            type="button"
            className="button"
            aria-pressed={picking === part}
            onClick={() => useOutlines.setState({ picking: part })}
          >
            <span className="take-name">{said(name)}</span>
            <Size sheet={sheet} part={part} />
          </button>
        ))}
      </fieldset>
      <Unit sheet={sheet} />
      <button
        type="button"
        className="button button-main"
        disabled={!both}
        onClick={() => useOutlines.setState({ step: 'places', hand: undefined })}
      >
        <span className="take-name">{words`Look at the corners`}</span>
        <span className="take-what">{both ? words`what was found is lit` : words`when both are picked`}</span>
      </button>
    </>
  );
}

function Size({ sheet, part }: { readonly sheet: DrawnSheet; readonly part: Part }) {
  const work = useOutlines((state) => state.work);
  const units = useBench((state) => state.project.units);
  const outline = sheet.outlines[work[part]?.outline ?? -1];
  if (!outline) return <span className="take-what">{words`not picked yet`}</span>;
  const reach = outlineReach(outline) * work.unit;
  return (
    <span className="take-what">
      {isBlockSize(reach)
        ? words`${own(formatLength(reach, units))} long`
        : words`${own(formatLength(reach, units))} long, which no block is: look at the unit`}
    </span>
  );
}

function Unit({ sheet }: { readonly sheet: DrawnSheet }) {
  const work = useOutlines((state) => state.work);
  const id = useId();
  const value = UNITS.find((unit) => Math.abs(DRAWING_UNITS[unit] - work.unit) < 1e-9) ?? 'told';
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {words`One unit of the drawing`}
      </label>
      <span className="field-box field-pick">
        <select
          id={id}
          value={value}
          aria-describedby={`${id}-help`}
          onChange={({ target }) => {
            const unit = UNITS.find((one) => one === target.value);
            if (unit) setUnit(DRAWING_UNITS[unit], unit);
          }}
        >
          {value === 'told' && <option value="told">{words`As a known length tells`}</option>}
          {UNITS.map((unit) => (
            <option key={unit} value={unit}>
              {said(UNIT_NAMES[unit])}
            </option>
          ))}
        </select>
      </span>
      <p className="field-help" id={`${id}-help`}>
        {sheet.unit === undefined
          ? words`The drawing doesn’t tell its unit: look whether the lengths are right. On the next screen one length that you know sets it, too.`
          : words`The drawing tells it. On the next screen one length that you know corrects it, if need be.`}
      </p>
    </div>
  );
}
