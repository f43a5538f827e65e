#include "ui/catalogue/variation_form.h"

#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <algorithm>

namespace ui {

namespace {

FieldNote *problemNote(const char *name)
{
    return named(name, new FieldNote(FieldNote::Kind::problem));
}

QSpinBox *counts(const QString &accessibleName)
{
    auto *box = new QSpinBox;
    box->setRange(0, 20);
    box->setAccessibleName(accessibleName);
    return box;
}

QDoubleSpinBox *decimals(double low, double high, double step, int places)
{
    auto *box = new QDoubleSpinBox;
    box->setDecimals(places);
    box->setRange(low, high);
    box->setSingleStep(step);
    return box;
}

QPlainTextEdit *fewLines()
{
    auto *edit = new QPlainTextEdit;
    edit->setTabChangesFocus(true);
    edit->setFixedHeight(64);
    return edit;
}

} // namespace

VariationForm::VariationForm(QWidget *parent)
    : QScrollArea(parent)
{
    auto *page = new QWidget;
    auto *form = new QFormLayout(page);
    buildIdentity(form);
    buildSets(form);
    buildLoad(form);
    buildUse(form);
    setWidget(page);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);

    for (QLineEdit *edit : {m_name, m_code, m_stance, m_purpose, m_source})
        connect(edit, &QLineEdit::textEdited, this, &VariationForm::read);
    for (QComboBox *box : {m_lift, m_serves, m_fatigue})
        connect(box, &QComboBox::currentIndexChanged, this, &VariationForm::read);
    for (QSpinBox *box : {m_lowering, m_pause, m_lifting, m_repsLow, m_repsHigh})
        connect(box, &QSpinBox::valueChanged, this, &VariationForm::read);
    for (QDoubleSpinBox *box : {m_ratio, m_spread, m_repCost, m_percent})
        connect(box, &QDoubleSpinBox::valueChanged, this, &VariationForm::read);
    for (QComboBox *box : m_work)
        connect(box, &QComboBox::currentIndexChanged, this, &VariationForm::read);
    connect(m_assistance, &QCheckBox::toggled, this, &VariationForm::read);
    for (QPlainTextEdit *edit : {m_whenToUse, m_cautions})
        connect(edit, &QPlainTextEdit::textChanged, this, &VariationForm::read);
}

void VariationForm::buildIdentity(QFormLayout *form)
{
    m_name = named("name", new QLineEdit);
    m_code = named("code", new QLineEdit);
    m_lift = named("lift", new QComboBox);
    for (const core::Lift lift : {core::Lift::bench, core::Lift::squat, core::Lift::deadlift})
        m_lift->addItem(core::words(lift), int(lift));
    m_serves = new QComboBox;
    for (const core::Serves serves :
        {core::Serves::both, core::Serves::soft, core::Serves::sinking})
        m_serves->addItem(touchMarkIcon(serves, palette()), core::words(serves), int(serves));
    m_stance = new QLineEdit;
    m_stance->setPlaceholderText(tr("such as: conventional, sumo, wide"));
    m_purpose = new QLineEdit;
    m_competition = explain(tr("The competition lift: the ratios of all others refer to it, so its "
                               "own is 1, and it stays on the shelf."));
    m_assistance = named("assistance", new QCheckBox(tr("&Assistance work")));
    m_nameProblem = problemNote("nameProblem");
    m_codeProblem = problemNote("codeProblem");

    addRow(form, tr("&Name"), m_name, withNotes(m_name, {m_nameProblem, m_competition}));
    addRow(form, tr("Co&de"), m_code,
        withNotes(m_code,
            {m_codeProblem,
                explain(tr("Stands for the variation in log files; it stays once it is saved."))}));
    addRow(form, tr("&Lift"), m_lift, inRow({m_lift}));
    addRow(form, tr("Role"), m_assistance,
        withNotes(m_assistance,
            {explain(tr("Beside the lift, such as rows: no sets of the lift, and nothing that its "
                        "max is estimated from. Loads are not worked out; the lifter goes by the "
                        "effort."))}));
    addRow(form, tr("&Touch it trains"), m_serves, inRow({m_serves}));
    addRow(form, tr("Stan&ce"), m_stance,
        withNotes(m_stance, {explain(tr("Squat and deadlift only."))}));
    addRow(form, tr("&Purpose, in a line"), m_purpose, m_purpose);
}

void VariationForm::buildSets(QFormLayout *form)
{
    m_lowering = counts(tr("Counts down"));
    m_pause = counts(tr("Counts of pause"));
    m_lifting = counts(tr("Counts up"));
    addRow(form, tr("Te&mpo in counts"), m_lowering,
        withNotes(inRow({new QLabel(tr("down")), m_lowering, new QLabel(tr("pause")), m_pause,
                      new QLabel(tr("up")), m_lifting}),
            {explain(tr("A count is about a second. 0 down: not prescribed; 0 up: as fast as "
                        "possible."))}));
    m_repsLow = named("repsLow", counts(tr("Fewest reps a set")));
    m_repsHigh = named("repsHigh", counts(tr("Most reps a set")));
    for (QSpinBox *box : {m_repsLow, m_repsHigh})
        box->setRange(1, 50);
    m_repsProblem = problemNote("repsProblem");
    addRow(form, tr("R&eps a set"), m_repsLow,
        withNotes(inRow({m_repsLow, new QLabel(tr("to")), m_repsHigh}), {m_repsProblem}));
}

void VariationForm::buildLoad(QFormLayout *form)
{
    m_ratio = named("ratio", decimals(0.2, 2.0, 0.01, 3));
    m_spread = decimals(0.0, 0.5, 0.005, 3);
    m_source = new QLineEdit;
    m_repCost = decimals(0.25, 4.0, 0.05, 2);
    m_percent = named("usualPercent", decimals(0.0, 100.0, 5.0, 0));
    m_percent->setSuffix(tr(" %"));
    m_percent->setSpecialValueText(tr("by effort"));
    m_fatigue = new QComboBox;
    for (const core::Fatigue fatigue :
        {core::Fatigue::low, core::Fatigue::moderate, core::Fatigue::high})
        m_fatigue->addItem(core::words(fatigue), int(fatigue));
    addRow(form, tr("Rat&io to competition"), m_ratio,
        withNotes(inRow({m_ratio, new QLabel(tr("give or take")), m_spread}),
            {explain(tr("Its max over the competition max: the mean of lifters, and one standard "
                        "deviation between them. Each lifter's own sets take over from it."))}));
    addRow(form, tr("S&ource of the ratio"), m_source,
        withNotes(m_source,
            {explain(tr("Where the ratio was published, or: common practice, no source."))}));
    addRow(form, tr("Cost of a rep"), m_repCost,
        withNotes(inRow({m_repCost}),
            {explain(tr("Against a rep of the competition lift: 1.2 means that a set at the same "
                        "share of its max ends sooner."))}));
    addRow(form, tr("Usual share of its max"), m_percent,
        withNotes(inRow({m_percent}),
            {explain(tr("Where speed is the aim and an effort rating says little: what a new card "
                        "and the advice begin with."))}));
    addRow(form, tr("&Fatigue"), m_fatigue, inRow({m_fatigue}));
    m_otherProblem = problemNote("otherProblem");
    form->addRow(m_otherProblem);
}

void VariationForm::buildUse(QFormLayout *form)
{
    auto *grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    constexpr int kAreasARow = 3;
    for (const core::BodyArea area : core::kBodyAreas) {
        auto *box = new QComboBox;
        box->setObjectName(QStringLiteral("work_") + core::fileWord(area));
        box->setAccessibleName(tr("How much it works the %1").arg(core::words(area)));
        for (const core::Work work : {core::Work::none, core::Work::some, core::Work::much})
            box->addItem(core::words(work), int(work));
        const int at = int(m_work.size());
        grid->addWidget(new QLabel(core::words(area)), at / kAreasARow, 2 * (at % kAreasARow));
        grid->addWidget(box, at / kAreasARow, 2 * (at % kAreasARow) + 1);
        m_work.push_back(box);
    }
    grid->setColumnStretch(2 * kAreasARow, 1);
    addRow(form, tr("Wor&ks"), m_work.front(),
        withNotes(boxed(grid),
            {explain(
                tr("Where it hurts, nothing that works the area, some or much, is suggested. "
                   "What works a sore area less is offered in place of what works it more."))}));
    m_whenToUse = fewLines();
    m_cautions = fewLines();
    addRow(form, tr("&When to use"), m_whenToUse, m_whenToUse);
    addRow(form, tr("Ca&utions"), m_cautions,
        withNotes(m_cautions, {explain(tr("Printed on the plan where it matters."))}));
}

void VariationForm::setVariation(const core::Variation &variation, bool isNew)
{
    m_filling = true;
    m_variation = variation;
    m_isNew = isNew;
    const auto choose = [](QComboBox *box, int value) {
        box->setCurrentIndex(box->findData(value));
    };
    const auto setLine = [](QLineEdit *edit, const QString &text) {
        if (edit->text() != text) { // keeps the cursor where the coach types
            edit->setText(text);
            edit->setCursorPosition(0);
        }
    };
    setLine(m_name, variation.name);
    setLine(m_code, variation.code);
    choose(m_lift, int(variation.lift));
    choose(m_serves, int(variation.serves));
    setLine(m_stance, variation.stance);
    setLine(m_purpose, variation.purpose);
    m_lowering->setValue(variation.tempo.lowering);
    m_pause->setValue(variation.tempo.pause);
    m_lifting->setValue(variation.tempo.lifting);
    m_repsLow->setValue(variation.repsLow);
    m_repsHigh->setValue(variation.repsHigh);
    m_ratio->setValue(variation.ratio);
    m_spread->setValue(variation.ratioSpread);
    setLine(m_source, variation.ratioSource);
    m_repCost->setValue(variation.repCost);
    m_percent->setValue(variation.usualPercent.value_or(0.0));
    m_assistance->setChecked(variation.assistance);
    choose(m_fatigue, int(variation.fatigue));
    for (size_t i = 0; i < m_work.size(); ++i)
        choose(m_work[i], int(variation.work[core::kBodyAreas[i]]));
    if (m_whenToUse->toPlainText() != variation.whenToUse)
        m_whenToUse->setPlainText(variation.whenToUse);
    if (m_cautions->toPlainText() != variation.cautions)
        m_cautions->setPlainText(variation.cautions);
    m_filling = false;
    showOpenFields();
}

void VariationForm::showOpenFields()
{
    m_competition->setVisible(m_variation.competition);
    m_code->setReadOnly(!m_isNew);
    m_lift->setEnabled(m_isNew);
    m_stance->setEnabled(m_variation.lift != core::Lift::bench);
    const bool hasRatio = !m_variation.competition && !m_variation.assistance;
    m_ratio->setEnabled(hasRatio);
    m_spread->setEnabled(hasRatio);
    m_repCost->setEnabled(!m_variation.assistance);
    m_percent->setEnabled(!m_variation.assistance);
    m_assistance->setEnabled(!m_variation.competition);
}

void VariationForm::setProblems(const core::VariationProblems &problems)
{
    m_nameProblem->say(problems.value(core::VariationField::name));
    m_codeProblem->say(problems.value(core::VariationField::code));
    m_repsProblem->say(problems.value(core::VariationField::reps));
    m_otherProblem->say(problems.value(core::VariationField::other));
}

void VariationForm::focusName()
{
    ensureWidgetVisible(m_name);
    m_name->setFocus();
    m_name->selectAll();
}

void VariationForm::read()
{
    if (m_filling)
        return;
    core::Variation &v = m_variation;
    v.name = m_name->text();
    v.code = m_code->text();
    v.lift = static_cast<core::Lift>(m_lift->currentData().toInt());
    v.serves = static_cast<core::Serves>(m_serves->currentData().toInt());
    v.stance = v.lift == core::Lift::bench ? QString() : m_stance->text();
    v.purpose = m_purpose->text();
    v.tempo = {m_lowering->value(), m_pause->value(), m_lifting->value()};
    v.repsLow = m_repsLow->value();
    v.repsHigh = m_repsHigh->value();
    // A box rounds what it shows; what it was given and still shows stays exact.
    const auto take = [](double &kept, const QDoubleSpinBox *box) {
        if (box->textFromValue(kept) != box->textFromValue(box->value()))
            kept = box->value();
    };
    take(v.ratio, m_ratio);
    take(v.ratioSpread, m_spread);
    v.ratioSource = m_source->text();
    take(v.repCost, m_repCost);
    double percent = v.usualPercent.value_or(0.0);
    take(percent, m_percent);
    v.usualPercent = percent > 0.0 ? std::optional(percent) : std::nullopt;
    v.assistance = m_assistance->isChecked();
    v.fatigue = static_cast<core::Fatigue>(m_fatigue->currentData().toInt());
    for (size_t i = 0; i < m_work.size(); ++i)
        v.work[core::kBodyAreas[i]] = core::Work(m_work[i]->currentData().toInt());
    v.whenToUse = m_whenToUse->toPlainText();
    v.cautions = m_cautions->toPlainText();
    showOpenFields();
    Q_EMIT edited(v);
}

} // namespace ui
