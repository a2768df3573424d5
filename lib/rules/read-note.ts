import { ORDERS, type Order, REFUSALS, type Refusal, type Saying } from './note-sayings';
import { type NoteSpan, type NoteWord, isNext, noteWords, wordsOfPhrase } from './note-words';

/** Where a note says something, and what is left of the words there once it is struck: 'no steaks' of 'no roasts or steaks'. */
export type Said = NoteSpan & { readonly saying: Saying; readonly left: string };

type Note = { readonly text: string; readonly words: readonly NoteWord[] };

const WITHOUT = ['no', 'without', 'without any', 'not any', "don't want", "don't want any", 'do not want', 'do not want any', "don't make", "don't make any", 'do not make', 'do not make any'];
/** Words that may stand straight behind what is said; any other narrows it: 'no roasts over 3 lb'. */
const AFTER = ['please', 'thanks', 'thank', 'at', 'and', 'just', 'only', 'made', 'wanted', 'whatsoever', 'i', 'we'];
const BUT = ['but', 'except', 'excepting', 'unless', 'apart', 'save', 'besides', 'other', 'if', 'when'];
const BEFORE = ['not', 'no', "don't", 'never', 'almost', 'nearly', 'if', 'is', "it's", 'was', 'are', 'has', 'had', 'have', "there's", 'tender', 'inner', 'inside', 'pork'];
/** With one of these in it, 'grind everything' is said of what is left. */
const NAMED = ['steak', 'roast', 'joint', 'chop', 'medallion', 'whole', 'jerky', 'stew', 'dice', 'diced', 'sausage', 'stick', 'backstrap', 'strap', 'loin', 'tenderloin', 'fillet', 'filet', 'haunch', 'leg', 'ham', 'round', 'shank', 'rib', 'neck', 'shoulder', 'rump', 'sirloin', 'else', 'keep', 'leave', 'left', 'rest', 'remaining', 'trim'];

function isOneOf(word: NoteWord | undefined, texts: readonly string[]): boolean {
  return word !== undefined && texts.some((text) => word.text === text || word.text === `${text}s`);
}

/** The longest of these phrases at a word, by how many words it has; 0 where none is there. */
function longest({ text, words }: Note, at: number, phrases: readonly string[]): number {
  return Math.max(0, ...phrases.map((phrase) => wordsOfPhrase(text, words, at, phrase)));
}

/** Whether nothing before or behind narrows what is said from one word to another. */
function isPlain({ text, words }: Note, from: number, to: number): boolean {
  const isLed = isNext(text, words, from) && isOneOf(words[from - 1], BEFORE);
  const follows = words[to];
  const isFollowed = isNext(text, words, to) ? !isOneOf(follows, AFTER) : isOneOf(follows, BUT);
  const isQuestion = text.slice(words[to - 1]?.end).trimStart().startsWith('?');
  return !isLed && !isFollowed && !isQuestion;
}

function spanOf({ words }: Note, from: number, to: number): NoteSpan {
  return { at: words[from]?.at ?? 0, end: words[to - 1]?.end ?? 0 };
}

/** 'No roasts or steaks' at a word: one for each thing refused. */
function refusedAt(note: Note, from: number): readonly Said[] {
  const start = from + longest(note, from, WITHOUT);
  if (start === from) return [];
  const refused: { readonly refusal: Refusal; readonly said: string }[] = [];
  let to = start;
  for (let at = start; ; ) {
    const here = REFUSALS.map((refusal) => ({ refusal, long: longest(note, at, refusal.nouns) }));
    const { refusal, long } = here.reduce((best, one) => (one.long > best.long ? one : best));
    if (long === 0 || !isNext(note.text, note.words, at)) break;
    to = at + long;
    const { at: begin, end } = spanOf(note, at, to);
    refused.push({ refusal, said: note.text.slice(begin, end) });
    if (!isOneOf(note.words[to], ['or', 'nor']) || !isNext(note.text, note.words, to)) break;
    at = to + 1;
  }
  if (refused.length === 0 || !isPlain(note, from, to)) return [];
  const { at: begin, end } = spanOf(note, from, start);
  return [...new Set(refused.map(({ refusal }) => refusal))].map((saying) => {
    const others = refused.filter(({ refusal }) => refusal !== saying).map(({ said }) => said);
    const left = others.length === 0 ? '' : `${note.text.slice(begin, end)} ${others.join(' or ')}`;
    return { saying, left, ...spanOf(note, from, to) };
  });
}

function orderedAt(note: Note, from: number, order: Order): readonly Said[] {
  const long = longest(note, from, order.phrases) || (isFirst(note, from) ? longest(note, from, order.alone ?? []) : 0);
  const to = from + long;
  if (long === 0 || !isPlain(note, from, to)) return [];
  const isNamed = note.words.some((word, at) => (at < from || at >= to) && (isOneOf(word, NAMED) || isOneOf(word, BUT)));
  return order.unlessNamed && isNamed ? [] : [{ saying: order, left: '', ...spanOf(note, from, to) }];
}

/** Whether a word begins the note, a sentence or a line. */
function isFirst({ text, words }: Note, at: number): boolean {
  return at === 0 || /[.!;\n]/.test(text.slice(words[at - 1]?.end, words[at]?.at));
}

/** All that a note plainly says of the kinds known, in the order it is written. What is narrowed or doubtful is passed over. */
export function readNote(text: string): readonly Said[] {
  const note = { text, words: noteWords(text) };
  return note.words.flatMap((_, at) => [...refusedAt(note, at), ...ORDERS.flatMap((order) => orderedAt(note, at, order))]);
}
