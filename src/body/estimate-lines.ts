// Computed from the open surveys by .house/make-estimate-lines.ts; a test computes it again. Don't edit by hand.
import type { SurveyLines } from './survey-line';

/** Least squares, women and men counted alike, the waist at the navel. @source ANSUR II (NATICK/TR-15/007, 2014) */
export const ADULTS: SurveyLines['adults'] = {
  bodyRise: [
    {
      intercept: -76.665,
      by: { waistGirth: -0.076364, hipGirth: -0.047563, height: 0.32596, insideLeg: -0.39438, crotchLength: 0.26964 },
      spread: 12.6,
      people: 6068,
    },
    {
      intercept: -80.197,
      by: { waistGirth: -0.1169, hipGirth: 0.092174, height: 0.41312, insideLeg: -0.49564 },
      spread: 14.9,
      people: 6068,
    },
    {
      intercept: -34.136,
      by: { waistGirth: -0.041448, hipGirth: -0.099127, height: 0.092332, crotchLength: 0.35482 },
      spread: 15.4,
      people: 6068,
    },
    {
      intercept: 51.769,
      by: { waistGirth: -0.0087194, hipGirth: -0.13834, insideLeg: 0.056385, crotchLength: 0.4111 },
      spread: 16.8,
      people: 6068,
    },
    {
      intercept: 90.936,
      by: { waistGirth: 0.0020104, hipGirth: -0.14902, crotchLength: 0.42391 },
      spread: 17.1,
      people: 6068,
    },
    {
      intercept: -23.556,
      by: { waistGirth: -0.086656, hipGirth: 0.082027, height: 0.13124 },
      spread: 18.9,
      people: 6068,
    },
    {
      intercept: 106.41,
      by: { waistGirth: -0.048525, hipGirth: 0.066424, insideLeg: 0.09055 },
      spread: 21.4,
      people: 6068,
    },
    { intercept: 173.3, by: { waistGirth: -0.032993, hipGirth: 0.059398 }, spread: 21.9, people: 6068 },
  ],
  insideLeg: [
    {
      intercept: -132.29,
      by: { waistGirth: -0.12728, hipGirth: 0.0832, height: 0.66908, bodyRise: -0.76471 },
      spread: 18.5,
      people: 6068,
    },
    {
      intercept: -114.28,
      by: { waistGirth: -0.061013, hipGirth: 0.020473, height: 0.56872 },
      spread: 23.5,
      people: 6068,
    },
    {
      intercept: 645.43,
      by: { waistGirth: 0.1893, hipGirth: -0.10959, bodyRise: 0.53872 },
      spread: 52.1,
      people: 6068,
    },
    { intercept: 738.79, by: { waistGirth: 0.17153, hipGirth: -0.077589 }, spread: 53.4, people: 6068 },
  ],
  hipDepth: [
    {
      intercept: -137.61,
      by: { waistGirth: -0.10191, hipGirth: -0.048397, height: 0.30103, insideLeg: -0.26033, crotchLength: 0.2233 },
      spread: 20.9,
      people: 6068,
    },
    {
      intercept: -109.54,
      by: { waistGirth: -0.07886, hipGirth: -0.082435, height: 0.14681, crotchLength: 0.27952 },
      spread: 21.7,
      people: 6068,
    },
    {
      intercept: -140.54,
      by: { waistGirth: -0.13547, hipGirth: 0.067323, height: 0.37321, insideLeg: -0.34419 },
      spread: 21.9,
      people: 6068,
    },
    {
      intercept: -101.2,
      by: { waistGirth: -0.11447, hipGirth: 0.060277, height: 0.17746 },
      spread: 23.3,
      people: 6068,
    },
    {
      intercept: -19.003,
      by: { waistGirth: -0.039438, hipGirth: -0.13223, insideLeg: 0.15595, crotchLength: 0.35393 },
      spread: 23.3,
      people: 6068,
    },
    {
      intercept: 89.324,
      by: { waistGirth: -0.009761, hipGirth: -0.16176, crotchLength: 0.38938 },
      spread: 24.7,
      people: 6068,
    },
    {
      intercept: 28.036,
      by: { waistGirth: -0.073709, hipGirth: 0.044061, insideLeg: 0.18537 },
      spread: 25.9,
      people: 6068,
    },
    { intercept: 164.98, by: { waistGirth: -0.041913, hipGirth: 0.029678 }, spread: 27.7, people: 6068 },
  ],
  crotchLength: [
    {
      intercept: -13.098,
      by: { waistGirth: -0.15032, hipGirth: 0.51824, height: 0.32324, insideLeg: -0.37554 },
      spread: 29.7,
      people: 6068,
    },
    { intercept: 29.818, by: { waistGirth: -0.12741, hipGirth: 0.51055, height: 0.10966 }, spread: 31, people: 6068 },
    {
      intercept: 132.9,
      by: { waistGirth: -0.096828, hipGirth: 0.49809, insideLeg: 0.083107 },
      spread: 32,
      people: 6068,
    },
    { intercept: 194.3, by: { waistGirth: -0.082573, hipGirth: 0.49164 }, spread: 32.3, people: 6068 },
  ],
};

/**
 * Least squares, sexes together, under eighteen. Nobody's crotch height was taken: inside leg = gluteal furrow + 0.018 ×
 * stature, an inference.
 *
 * @source UM-HSRI-77-17, 1977
 */
export const CHILDREN: SurveyLines['children'] = {
  height: [
    { intercept: 239.94, by: { waistGirth: -0.22237, hipGirth: 0.58595, insideLeg: 1.3 }, spread: 29.9, people: 1205 },
    { intercept: 590.5, by: { waistGirth: 0.038577, hipGirth: 0.52532, ageYears: 37.61 }, spread: 62.5, people: 3684 },
    { intercept: 313.32, by: { waistGirth: -0.5829, hipGirth: 1.9723 }, spread: 89.9, people: 3684 },
  ],
  waistHeight: [
    {
      intercept: -134.93,
      by: { waistGirth: -0.034756, hipGirth: -0.022868, height: 0.71623 },
      spread: 17.1,
      people: 1242,
    },
  ],
  insideLeg: [
    { intercept: -156, by: { waistGirth: 0.1185, hipGirth: -0.28007, height: 0.68264 }, spread: 21.7, people: 1205 },
  ],
};
