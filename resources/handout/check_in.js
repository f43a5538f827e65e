/* How the lifter is, before training: 1 is the worst and 5 the best answer throughout. */
function drawCheckIn(checkIn) {
  const set = (key, value) => { checkIn[key] = value; changed(); };
  const answered = hasCheckIn(checkIn);
  const details = el('details', {open: view.checkIn === undefined ? !answered : view.checkIn,
    ontoggle: () => { view.checkIn = details.open; }},
  el('summary', {}, (answered ? '✓ ' : '') + W.checkIn),
  scale('sleep', W.sleep, plan.scales.sleep, checkIn.sleep, value => set('sleep', value)),
  scale('stress', W.stress, plan.scales.stress, checkIn.stress, value => set('stress', value)),
  scale('motivation', W.motivation, plan.scales.motivation, checkIn.motivation,
    value => set('motivation', value)),
  drawSoreness(checkIn),
  drawPain(checkIn));
  return el('section', {class: 'box'}, details);
}

/* The areas are asked about only where something is sore. */
function drawSoreness(checkIn) {
  const answers = Object.values(checkIn.sore);
  const none = answers.length === plan.areas.length && answers.every(answer => answer === 5);
  const some = view.sore || (answers.length > 0 && !none);
  return el('div', {},
    choice({name: 'sore', legend: W.soreness, chosen: none ? 'none' : some ? 'some' : null,
      options: [{value: 'none', label: W.nothingSore}, {value: 'some', label: W.somethingSore}],
      choose: value => {
        checkIn.sore = {};
        if (value === 'none')
          for (const area of plan.areas) checkIn.sore[area.code] = 5;
        view.sore = value === 'some';
        changed();
      }}),
    !some ? '' : plan.areas.map(area => scale('sore-' + area.code, area.words, plan.scales.soreness,
      checkIn.sore[area.code], value => {
        if (value) checkIn.sore[area.code] = value;
        else delete checkIn.sore[area.code];
        view.sore = true;
        changed();
      })));
}

function drawPain(checkIn) {
  const options = [{value: 'no', label: W.noPain},
    ...plan.areas.map(area => ({value: area.code, label: area.words})),
    {value: 'elsewhere', label: W.elsewhere}];
  const pain = checkIn.pain;
  return el('div', {},
    choice({name: 'pain', legend: W.pain, options,
      chosen: pain ? pain.area || 'elsewhere' : checkIn.painFree ? 'no' : null,
      choose: value => {
        checkIn.painFree = value === 'no';
        checkIn.pain = !value || value === 'no' ? null
          : {area: value === 'elsewhere' ? null : value, words: pain ? pain.words : ''};
        changed();
      }}),
    pain ? textField('pain-words', W.painWords, pain.words, value => {
      pain.words = value;
      keep();
    }) : '');
}
