'use strict';
/* What the lifter said, and where it is kept. Entries of a day:
 *   on        day it was trained on, ISO
 *   checkIn   {sleep, stress, motivation, sore: {area: 1..5}, pain: {area, words} | null, painFree,
 *             note}
 *   sets      {"card.set": entry}; extra sets are numbered on from the planned ones
 * An entry is {code, loadKg, reps, rpe, failed, touch, note}, or {skipped: true}. */
const plan = JSON.parse(document.getElementById('plan').textContent);
const W = plan.words;
const storeKey = ['benchwright', plan.lifter.id, plan.lifter.name, plan.week, plan.mark].join('/');
let keeps = true; // whether entries outlive the page

function emptyDay(day) {
  const today = isoDay(new Date());
  return {
    on: day.date <= today ? day.date : today,
    checkIn: {sore: {}, pain: null, note: ''},
    sets: {},
  };
}

function isoDay(date) {
  const two = n => String(n).padStart(2, '0');
  return date.getFullYear() + '-' + two(date.getMonth() + 1) + '-' + two(date.getDate());
}

function kept() {
  try {
    return JSON.parse(localStorage.getItem(storeKey)) || {};
  } catch (refused) {
    keeps = false;
    return {};
  }
}

const record = kept();
for (const day of plan.days)
  record[day.date] = Object.assign(emptyDay(day), record[day.date]);

function keep() {
  try {
    localStorage.setItem(storeKey, JSON.stringify(record));
  } catch (refused) {
    keeps = false;
  }
}

/* Planned sets and then the extra ones, each with its number on the card, from 1. */
function setsOf(day, card) {
  const sets = card.sets.map((planned, i) => ({planned, number: i + 1}));
  const entries = record[day.date].sets;
  for (let n = sets.length + 1; entries[card.card + '.' + n]; ++n)
    sets.push({planned: null, number: n});
  for (const set of sets) {
    set.key = card.card + '.' + set.number;
    set.entry = entries[set.key] || null;
  }
  return sets;
}

function allSets(day) {
  return day.cards.flatMap(card => setsOf(day, card));
}

function isDone(set) {
  return Boolean(set.entry && !set.entry.skipped);
}

/* The pains of the week that stand on the day: each until a later day answers that there is none. */
function painsOn(day) {
  let pains = [];
  for (const other of plan.days) {
    if (other.date > day.date) break;
    const said = record[other.date].checkIn;
    if (said.painFree) pains = [];
    else if (said.pain) pains.push(said.pain);
  }
  return pains;
}

function hasPain(day) {
  return painsOn(day).length > 0;
}

/* Whether pain speaks against the planned set: it works what hurts, or it is maximal. A pain of
 * which no area is named may be anywhere. */
function hurtsIn(day, planned) {
  return painsOn(day).some(pain =>
    planned.isMaximal || !pain.area || planned.works.includes(pain.area));
}

function isPlaceUnknown(day) {
  return painsOn(day).some(pain => !pain.area);
}

function isHeld(day, planned) {
  return planned.isWithheld || hurtsIn(day, planned);
}

function hasCheckIn(checkIn) {
  return Boolean(checkIn.sleep || checkIn.stress || checkIn.motivation || checkIn.pain ||
    checkIn.painFree || checkIn.note.trim() || Object.keys(checkIn.sore).length);
}

/* Loads are kept in kg and shown in the lifter's unit. A pound is 0.45359237 kg (1959). */
const kgPerUnit = plan.unit === 'lb' ? 0.45359237 : 1;

function plain(value, decimals) {
  return String(Number(value.toFixed(decimals)));
}

function fromUnit(amount) {
  return Number((amount * kgPerUnit).toFixed(4));
}

function shownLoad(loadKg) {
  return plain(loadKg / kgPerUnit, 2).replace('.', plan.decimal);
}

/* A number as typed, with a point or a comma; NaN for anything else. */
function typed(text) {
  const trimmed = text.trim().replace(',', '.');
  return /^\d+(\.\d*)?$/.test(trimmed) ? Number(trimmed) : NaN;
}
