export const unitNames = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;
export const tensNames = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;

const unitWord = `(?:${unitNames.slice(1).join('|')})`;
const tensWord = `(?:${tensNames.join('|')})(?:[- ]${unitWord})?`;

/** Pattern for a number in figures (`1.5`, `1,5`) or words up to nine hundred and ninety-nine. */
export const numberPattern = `(?:\\d+(?:[.,]\\d+)?|(?:(?:a|one|two|three|four|five|six|seven|eight|nine) hundred(?: and)?(?: (?:${tensWord}|${unitWord}))?)|${tensWord}|${unitWord})`;

/** The number that words or figures matching `numberPattern` say; null where they do not. */
export function spokenNumber(words: string): number | null {
  const text = words.trim().toLowerCase();
  if (/^\d+(?:[.,]\d+)?$/.test(text)) return Number(text.replace(',', '.'));
  let sum = 0;
  for (const word of text.split(/[- ]+/)) {
    if (word === 'and') continue;
    if (word === 'hundred') sum = (sum || 1) * 100;
    else if (word === 'a') sum += 1;
    else {
      const unit = (unitNames as readonly string[]).indexOf(word);
      const ten = (tensNames as readonly string[]).indexOf(word);
      if (unit >= 0) sum += unit;
      else if (ten >= 0) sum += (ten + 2) * 10;
      else return null;
    }
  }
  return sum;
}
