import { fieldText, formatLength, MM_PER_INCH, type Mm, plain, type Units } from '../../../length';

/** An eighth is named where the length is one as nearly as anybody cuts, millimetres. */
const EIGHTH = 0.25;

/**
 * A length beside a button: exact to half a millimetre in both units. In inches eighths are written as eighths, and what
 * lies between them in hundredths.
 */
export function handleLength(mm: Mm, units: Units): string {
  if (units === 'cm') return formatLength(mm, units);
  const eighths = Math.round((mm / MM_PER_INCH) * 8);
  const near = Math.abs((eighths / 8) * MM_PER_INCH - mm) <= EIGHTH;
  return `${near ? fieldText((eighths / 8) * MM_PER_INCH, units) : plain(mm / MM_PER_INCH, 2)} in`;
}
