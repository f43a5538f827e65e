/* The return sheet: RFC 4180, UTF-8, decimal points, ISO dates, loads in kg. The columns come with
 * the plan, so that the page and the workbench cannot differ. */
function csvField(value) {
  const text = value === null || value === undefined ? '' : String(value);
  return /[",\r\n]|^\s|\s$/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text;
}

function sheetRows() {
  const rows = [{row: 'sheet', format: plan.format, lifter_id: plan.lifter.id,
    lifter: plan.lifter.name, week: plan.week, plan: plan.mark}];
  for (const day of plan.days) {
    const said = record[day.date];
    if (hasCheckIn(said.checkIn))
      rows.push(checkInRow(said));
    for (const card of day.cards)
      for (const set of setsOf(day, card))
        rows.push(setRow(day, card, set));
  }
  rows.push({row: 'end', rows: rows.length});
  return rows;
}

function checkInRow(said) {
  const checkIn = said.checkIn;
  const row = {row: 'check_in', date: said.on, sleep: checkIn.sleep, stress: checkIn.stress,
    motivation: checkIn.motivation, note: checkIn.note.trim()};
  for (const area of plan.areas)
    row['sore_' + area.code] = checkIn.sore[area.code];
  if (checkIn.pain) {
    row.pain = checkIn.pain.area || 'elsewhere';
    row.pain_words = checkIn.pain.words.trim();
  } else if (checkIn.painFree) {
    row.pain = 'no';
  }
  return row;
}

function setRow(day, card, set) {
  const planned = set.planned || {};
  const row = {row: isDone(set) ? 'set' : set.entry ? 'skipped' : 'open', planned_date: day.date, card: card.card,
    set: set.number, planned_variation: planned.code, planned_kg: planned.loadKg,
    reps_planned: planned.reps, planned_rpe: planned.rpe};
  if (!isDone(set))
    return row;
  const entry = set.entry;
  Object.assign(row, {date: record[day.date].on, variation: entry.code, load_kg: entry.loadKg,
    reps_done: entry.reps, rpe: entry.rpe, failed: entry.failed ? 1 : 0, touch: entry.touch,
    note: (entry.note || '').trim()});
  if (planned.leadReps && entry.code === planned.code)
    Object.assign(row, {lead_variation: planned.leadCode, lead_reps: planned.leadReps});
  return row;
}

function sheetText() {
  const lines = sheetRows().map(row => plan.columns.map(name => csvField(row[name])).join(','));
  return [plan.columns.join(','), ...lines].join('\r\n') + '\r\n';
}

function sheetFile() {
  return new File([sheetText()], plan.fileName, {type: 'text/csv'});
}

function saveSheet() {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(sheetFile());
  link.download = plan.fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

function canShare() {
  return Boolean(navigator.canShare && navigator.canShare({files: [sheetFile()]}));
}

async function copySheet() {
  try {
    await navigator.clipboard.writeText(sheetText());
    return true;
  } catch (refused) {
    const area = document.createElement('textarea');
    area.value = sheetText();
    document.body.append(area);
    area.select();
    const copied = document.execCommand('copy');
    area.remove();
    return copied;
  }
}
