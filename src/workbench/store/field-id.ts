/** The id of the input that sets a path of the project. */
export const fieldId = (path: string): string => `field-${path.replaceAll('.', '-')}`;
