/* The page of a week: what is shown follows from the record; each tap changes it and draws anew. */
const view = {day: firstDay(), editing: null, rating: null, draft: null, error: '', giving: false,
  message: '', cautions: false, checkIn: undefined, sore: false};

function firstDay() {
  const today = isoDay(new Date());
  const open = plan.days.find(day => allSets(day).some(set => !set.entry));
  return plan.days.find(day => day.date === today) || open || plan.days[0];
}

const touchOptions = plan.touch.map((said, i) =>
  ({value: i + 1, label: (i + 1) + '  ' + said, words: said}));
const rpeOptions = Array.from({length: 11}, (_, i) => {
  const rpe = 5 + i / 2;
  return {value: rpe, label: (i ? '' : '≤ ') + String(rpe).replace('.', plan.decimal)};
});

function changed() {
  keep();
  draw();
}

/* Sets */

function plannedEntry(planned) {
  return {code: planned.code, loadKg: planned.loadKg, reps: planned.reps, rpe: null, failed: false,
    touch: null, note: ''};
}

/* What is typed over. Of a set that is held back no load is suggested. */
function firstEntry(day, planned) {
  const held = planned.works && isHeld(day, planned);
  return Object.assign(plannedEntry(planned), held ? {loadKg: null} : {});
}

function accept(day, set) {
  record[day.date].sets[set.key] = plannedEntry(set.planned);
  Object.assign(view, {editing: null, rating: set.key});
  changed();
}

function skip(day, set) {
  record[day.date].sets[set.key] = {skipped: true};
  view.editing = null;
  changed();
}

function takeBack(day, set) {
  if (set.planned)
    delete record[day.date].sets[set.key];
  else
    removeExtra(day, set);
  changed();
}

/* The extra sets below move up, so that their numbers stay without gaps. */
function removeExtra(day, set) {
  const entries = record[day.date].sets;
  const card = set.key.split('.')[0];
  let n = set.number;
  for (; entries[card + '.' + (n + 1)]; ++n)
    entries[card + '.' + n] = entries[card + '.' + (n + 1)];
  delete entries[card + '.' + n];
}

function edit(day, card, set) {
  const entry = isDone(set) ? set.entry : firstEntry(day, set.planned || lastOf(day, card));
  view.draft = Object.assign({}, entry, {
    load: entry.loadKg ? shownLoad(entry.loadKg) : '', reps: String(entry.reps)});
  Object.assign(view, {editing: set.key, rating: null, error: ''});
  draw();
  const field = document.getElementById('load');
  field.scrollIntoView({block: 'center'});
}

function nextSet(card, sets) {
  const number = sets.length + 1;
  return {planned: null, number, key: card.card + '.' + number, entry: null};
}

/* What an extra set begins with: the last set of the card. */
function lastOf(day, card) {
  const sets = setsOf(day, card);
  const last = sets[sets.length - 1];
  if (last && isDone(last)) // with what it works: where that hurts, no load is suggested
    return Object.assign({works: (last.planned || card.sets[0]).works}, last.entry);
  return (last && last.planned) || {code: card.code, loadKg: null, reps: 1};
}

function save(day, set) {
  const draft = view.draft;
  const load = typed(draft.load);
  const reps = typed(draft.reps);
  const samePlan = set.planned && set.planned.loadKg && draft.load === shownLoad(set.planned.loadKg);
  const loadKg = samePlan ? set.planned.loadKg : fromUnit(load);
  if (!(loadKg > 0 && loadKg <= 700))
    view.error = words(W.badLoad, plan.unit);
  else if (!Number.isInteger(reps) || reps > 100)
    view.error = W.badReps;
  else if (reps === 0 && !draft.failed)
    view.error = W.noReps;
  else
    view.error = '';
  if (!view.error) {
    record[day.date].sets[set.key] = {code: draft.code, loadKg, reps, rpe: draft.rpe,
      failed: draft.failed, touch: draft.touch, note: draft.note};
    view.editing = null;
  }
  changed();
}

function nameOf(code) {
  const swap = plan.swaps.find(variation => variation.code === code);
  return swap ? swap.name : code;
}

function isAsPlanned(set) {
  const {planned, entry} = set;
  return entry.code === planned.code && entry.loadKg === planned.loadKg &&
    entry.reps === planned.reps && !entry.failed;
}

function plannedWords(planned) {
  const load = planned.load ? planned.load + ' ' + plan.unit : W.loadOpen;
  return planned.repsWords + ' × ' + load;
}

function doneWords(set, card) {
  const entry = set.entry;
  return listed(entry.reps + ' × ' + shownLoad(entry.loadKg) + ' ' + plan.unit,
    entry.failed && W.missedOne,
    entry.rpe && 'RPE ' + String(entry.rpe).replace('.', plan.decimal),
    entry.touch && words(W.touchSaid, entry.touch),
    entry.code !== (set.planned || card).code && nameOf(entry.code));
}

function drawSet(day, card, set) {
  const title = set.planned ? words(W.setNumber, set.number) : W.extraSet;
  const id = 'set-' + set.key;
  const parts = [el('h3', {class: 'small muted'}, title)];
  if (set.planned && !isDone(set))
    parts.push(el('p', {class: 'what'}, plannedWords(set.planned)),
      el('p', {class: 'muted small'}, listed(set.planned.lead, set.planned.target,
        set.planned.effort,
        set.planned.plates && words(W.eachSide, set.planned.plates))));
  else if (set.planned && !isAsPlanned(set))
    parts.push(el('p', {class: 'small muted'}, words(W.plannedWas, plannedWords(set.planned))));
  const held = set.planned && !isDone(set) && isHeld(day, set.planned);
  if (held)
    parts.push(notice([W.heldBack, hurtsIn(day, set.planned) && W.painHere,
      isPlaceUnknown(day) && W.painWhere].filter(Boolean).join(' '), true));
  if (view.editing === set.key)
    parts.push(drawEditor(day, card, set));
  else if (isDone(set))
    parts.push(el('p', {class: 'what good'}, '✓ ' + doneWords(set, card)),
      el('div', {class: 'row'}, button(W.change, () => edit(day, card, set), {id: id + '-change'}),
        button(W.takeBack, () => takeBack(day, set), {id: id + '-back'})),
      view.rating === set.key ? drawRating(card, set) : '');
  else
    parts.push(set.entry ? el('p', {class: 'muted'}, '– ' + W.skipped) : '',
      el('div', {class: 'row'},
        set.planned.isExact && set.planned.loadKg && !held
          ? button('✓ ' + W.asPlanned, () => accept(day, set), {class: 'main', id: id + '-accept'})
          : button(W.enter, () => edit(day, card, set), {class: 'main', id: id + '-accept'}),
        button(W.change, () => edit(day, card, set), {id: id + '-change'}),
        set.entry ? '' : button(W.skip, () => skip(day, set), {id: id + '-skip'})));
  return el('div', {class: isDone(set) ? 'set' : 'set open-set', id}, parts);
}

/* Asked right after a set was accepted: a tap each, and both may be left out. */
function drawRating(card, set) {
  const entry = set.entry;
  return el('div', {class: 'editor'},
    choice({name: 'rpe', legend: W.howHard, options: rpeOptions, chosen: entry.rpe,
      ends: [W.rpeLow, W.rpeHigh], choose: value => { entry.rpe = value; changed(); }}),
    askTouch(card, entry, changed),
    el('div', {class: 'row'},
      button(W.doneRating, () => {
        view.rating = null;
        draw();
        const next = document.querySelector('.open-set');
        if (next) next.scrollIntoView({block: 'center'});
      }, {class: 'main wide', id: 'rated'})));
}

/* Only a bench press has a touch. */
function askTouch(card, entry, then) {
  return card.lift !== 'bench' ? ''
    : choice({name: 'touch', legend: W.howTouched, options: touchOptions, chosen: entry.touch,
      inWords: true, choose: value => { entry.touch = value; then(); }});
}

function drawEditor(day, card, set) {
  const draft = view.draft;
  const swaps = plan.swaps.filter(variation => variation.lift === card.lift);
  const select = el('select', {id: 'swap', onchange: () => { draft.code = select.value; }},
    swaps.map(variation => el('option', {value: variation.code,
      selected: variation.code === draft.code}, variation.name)));
  const missed = el('input', {type: 'checkbox', id: 'missed', checked: draft.failed,
    onchange: () => { draft.failed = missed.checked; }});
  return el('div', {class: 'editor'},
    stepper({id: 'load', label: words(W.load, plan.unit), value: draft.load, step: plan.step,
      decimal: true, change: value => { draft.load = value; }}),
    stepper({id: 'reps', label: W.reps, value: draft.reps, step: 1,
      change: value => { draft.reps = value; }}),
    el('label', {class: 'check', for: 'missed'}, missed, W.missed),
    choice({name: 'rpe', legend: W.howHard, options: rpeOptions, chosen: draft.rpe,
      ends: [W.rpeLow, W.rpeHigh], choose: value => { draft.rpe = value; draw(); }}),
    askTouch(card, draft, draw),
    swaps.length > 1
      ? el('label', {class: 'field', for: 'swap'}, W.variation, select) : '',
    textField('note', W.note, draft.note, value => { draft.note = value; }),
    view.error ? notice(view.error, true) : '',
    el('div', {class: 'row'},
      button(W.save, () => save(day, set), {class: 'main wide', id: 'save'}),
      button(W.cancel, () => { view.editing = null; draw(); }, {id: 'cancel'})));
}

/* Cards and days */

function drawCard(day, card) {
  const sets = setsOf(day, card);
  return el('section', {class: 'box'},
    el('h2', {}, card.name),
    el('p', {class: 'muted'}, listed(card.setLine, card.tempo)),
    card.purpose ? el('p', {class: 'small muted'}, card.purpose) : '',
    card.withheld.map(text => notice(text, true)),
    card.lighter.map(text => notice(text)),
    card.note ? notice(words(W.coachSays, card.note)) : '',
    card.cautions.length
      ? el('ul', {class: 'small'}, card.cautions.map(text => el('li', {}, text))) : '',
    (view.editing === nextSet(card, sets).key ? [...sets, nextSet(card, sets)] : sets)
      .map(set => drawSet(day, card, set)),
    el('div', {class: 'set'},
      button('+ ' + W.addSet, () => edit(day, card, nextSet(card, sets)), {id: 'add-' + card.card})));
}

function drawDay(day) {
  const said = record[day.date];
  const date = el('input', {type: 'date', id: 'on', value: said.on, max: isoDay(new Date()),
    onchange: () => { if (date.value) { said.on = date.value; changed(); } }});
  return [
    el('section', {class: 'box'}, el('h2', {}, day.words),
      el('label', {class: 'beside', for: 'on'}, W.trainedOn, date)),
    day.stops.map(text => notice(text, true)),
    drawCheckIn(said.checkIn),
    hasPain(day) ? notice(W.painStop, true) : '',
    day.cards.map(card => drawCard(day, card)),
    el('section', {class: 'box'}, textField('day-note', W.dayNote, said.checkIn.note, value => {
      said.checkIn.note = value;
      keep();
    })),
  ];
}

/* The page as a whole */

function drawDays() {
  return el('nav', {class: 'days', 'aria-label': W.days}, plan.days.map(day => {
    const sets = allSets(day);
    const done = sets.filter(isDone).length;
    return button('', () => {
      Object.assign(view, {day, editing: null, rating: null, giving: false, message: '',
        checkIn: undefined, sore: false});
      draw();
      window.scrollTo(0, 0);
    }, {'aria-pressed': String(!view.giving && view.day === day), id: 'day-' + day.date,
      'aria-label': day.words + ', ' + words(W.progress, done, sets.length)});
  }));
}

function drawBar() {
  const sets = plan.days.flatMap(allSets);
  const done = sets.filter(isDone).length;
  return el('div', {class: 'bar'}, el('div', {class: 'row'},
    el('p', {}, words(W.progress, done, sets.length)),
    view.giving
      ? button(W.backToPlan, () => { view.giving = false; draw(); }, {id: 'give'})
      : button(W.giveBack, () => {
        Object.assign(view, {giving: true, editing: null, message: ''});
        draw();
        window.scrollTo(0, 0);
      }, {class: 'main', id: 'give'})));
}

function drawGiving() {
  const sets = plan.days.flatMap(allSets);
  const open = sets.filter(set => !set.entry).length;
  const say = message => { view.message = message; draw(); };
  return [el('section', {class: 'box stack'},
    el('h2', {}, W.giveBack),
    el('p', {}, W.giveHow),
    open ? el('p', {class: 'muted'}, words(W.stillOpen, open)) : '',
    plan.days.some(hasPain) ? notice(W.painStop, true) : '',
    canShare() ? button(W.share, () => {
      navigator.share({files: [sheetFile()], title: plan.fileName}).catch(() => say(W.notShared));
    }, {class: canShare() ? 'main' : '', id: 'share'}) : '',
    el('div', {class: 'row'},
      button(W.saveFile, () => { saveSheet(); say(words(W.saved, plan.fileName)); },
        {class: canShare() ? '' : 'main', id: 'save-sheet'}),
      button(W.copy, async () => say(await copySheet() ? W.copied : W.notCopied), {id: 'copy'})),
    view.message ? el('p', {role: 'status', class: 'good'}, view.message) : '')];
}

function drawCautions() {
  const details = el('details', {open: view.cautions, ontoggle: () => {
    view.cautions = details.open;
  }}, el('summary', {}, W.safety),
  el('ul', {class: 'small'}, plan.cautions.map(text => el('li', {}, text))));
  return el('section', {class: 'notice'}, details);
}

function draw() {
  const focused = document.activeElement && document.activeElement.id;
  const days = drawDays();
  plan.days.forEach((day, i) => {
    const sets = allSets(day);
    const done = sets.filter(isDone).length;
    days.children[i].append(day.short, el('span', {},
      done === sets.length && done > 0 ? '✓ ' + W.allDone : words(W.ofSets, done, sets.length)));
  });
  document.getElementById('page').replaceChildren(
    el('h1', {}, plan.lifter.name),
    el('p', {class: 'muted'}, plan.weekWords),
    el('p', {class: 'small muted'}, plan.facts.join(' · ')),
    plan.stops.map(text => notice(text, true)),
    keeps ? '' : notice(W.notKept),
    days, ...(view.giving ? drawGiving() : [drawCautions(), ...drawDay(view.day)]).flat()
      .filter(child => child !== ''),
    drawBar());
  const again = document.getElementById(focused) || (view.rating && document.getElementById('rpe-8'));
  if (again) again.focus({preventScroll: true});
}

window.addEventListener('beforeunload', event => {
  if (!keeps && plan.days.some(day => allSets(day).some(isDone)))
    event.preventDefault();
});
draw();
