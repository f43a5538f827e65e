#include "ui/planning/rule_editor.h"

#include "ui/look/form_parts.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>

namespace ui {

std::vector<double> stepsOf(const QString &text)
{
    static const QRegularExpression kBetween(QStringLiteral("[;\\s]+|,\\s+"));
    std::vector<double> steps;
    for (const QString &word : text.split(kBetween, Qt::SkipEmptyParts)) {
        bool isNumber = false;
        double step = QLocale::c().toDouble(word, &isNumber);
        if (!isNumber)
            step = QLocale().toDouble(word, &isNumber);
        if (!isNumber)
            return {};
        steps.push_back(step);
    }
    return steps;
}

RuleEditor::RuleEditor(core::Unit unit, QWidget *parent)
    : QWidget(parent)
    , m_kind(new QComboBox)
    , m_amountLabel(new QLabel)
    , m_amount(new QDoubleSpinBox)
    , m_in(new QComboBox)
    , m_boundLabel(new QLabel)
    , m_bound(new QDoubleSpinBox)
    , m_stepsLabel(new QLabel(tr("Steps")))
    , m_steps(new QLineEdit(QStringLiteral("0, 2.5, 5")))
{
    m_kind->addItem(tr("Add load"), int(Kind::addLoad));
    m_kind->addItem(tr("Add reps"), int(Kind::addReps));
    m_kind->addItem(tr("Raise the RPE"), int(Kind::raiseRpe));
    m_kind->addItem(tr("Drop sets"), int(Kind::dropSets));
    m_kind->addItem(tr("Wave"), int(Kind::wave));
    m_kind->setAccessibleName(tr("Rule"));
    m_in->addItem(QStringLiteral("%"), int(core::LoadIn::percent));
    m_in->addItem(QStringLiteral("kg"), int(core::LoadIn::kilogram));
    m_in->addItem(QStringLiteral("lb"), int(core::LoadIn::pound));
    m_in->setCurrentIndex(unit == core::Unit::pound ? 2 : 1);
    m_in->setAccessibleName(tr("Unit of the load"));
    m_steps->setToolTip(tr("Against the first week, one a week, over and over"));
    m_steps->setMaximumWidth(140);

    fill(this,
        rowLayout({m_kind, m_stepsLabel, m_steps, m_amountLabel, m_amount, m_in, m_boundLabel,
                      m_bound, Stretch{1}},
            space::gap));

    connect(m_kind, &QComboBox::currentIndexChanged, this, &RuleEditor::showFields);
    connect(m_amount, &QDoubleSpinBox::valueChanged, this, &RuleEditor::changed);
    connect(m_bound, &QDoubleSpinBox::valueChanged, this, &RuleEditor::changed);
    connect(m_in, &QComboBox::currentIndexChanged, this, &RuleEditor::changed);
    connect(m_steps, &QLineEdit::textChanged, this, &RuleEditor::changed);
    showFields();
}

RuleEditor::Kind RuleEditor::kind() const
{
    return Kind(m_kind->currentData().toInt());
}

core::LoadIn RuleEditor::loadIn() const
{
    return core::LoadIn(m_in->currentData().toInt());
}

core::ProgressionRule RuleEditor::rule() const
{
    switch (kind()) {
    case Kind::addLoad:
        return core::AddLoad{m_amount->value(), loadIn()};
    case Kind::addReps:
        return core::AddReps{int(m_amount->value()), int(m_bound->value())};
    case Kind::raiseRpe:
        return core::RaiseRpe{m_amount->value(), m_bound->value()};
    case Kind::dropSets:
        return core::DropSets{int(m_amount->value()), int(m_bound->value())};
    case Kind::wave:
        break;
    }
    core::Wave wave{stepsOf(m_steps->text()), m_amount->value(), loadIn()};
    if (wave.steps.empty())
        wave.steps = {0.0};
    return wave;
}

void RuleEditor::showFields()
{
    struct Fields
    {
        QString amount;
        double least, most, step, value;
        int decimals;
        QString bound; ///< empty = none
        double boundLeast, boundMost, boundStep, boundValue;
    };
    const Fields fields = [this]() -> Fields {
        switch (kind()) {
        case Kind::addLoad:
            return {tr("a week"), -50, 50, 0.5, 2.5, 2, {}, 0, 0, 1, 0};
        case Kind::addReps:
            return {tr("reps a week"), -5, 5, 1, 1, 0, tr("at most"), 1, 50, 1, 12};
        case Kind::raiseRpe:
            return {tr("a week"), 0.5, 3, 0.5, 0.5, 1, tr("up to"), 5, 10, 0.5, 9.5};
        case Kind::dropSets:
            return {tr("sets a week"), 1, 5, 1, 1, 0, tr("down to"), 1, 10, 1, 1};
        case Kind::wave:
            break;
        }
        return {tr("rise a wave"), -50, 50, 0.5, 2.5, 2, {}, 0, 0, 1, 0};
    }();
    {
        // One signal at the end, not one a field.
        const QSignalBlocker blockAmount(m_amount);
        const QSignalBlocker blockBound(m_bound);
        m_amountLabel->setText(fields.amount);
        m_amount->setAccessibleName(fields.amount);
        m_amount->setDecimals(fields.decimals);
        m_amount->setRange(fields.least, fields.most);
        m_amount->setSingleStep(fields.step);
        m_amount->setValue(fields.value);
        m_boundLabel->setText(fields.bound);
        m_bound->setAccessibleName(fields.bound);
        m_bound->setDecimals(kind() == Kind::raiseRpe ? 1 : 0);
        m_bound->setRange(fields.boundLeast, fields.boundMost);
        m_bound->setSingleStep(fields.boundStep);
        m_bound->setValue(fields.boundValue);
    }
    const bool hasBound = !fields.bound.isEmpty();
    const bool isWave = kind() == Kind::wave;
    m_boundLabel->setVisible(hasBound);
    m_bound->setVisible(hasBound);
    m_in->setVisible(kind() == Kind::addLoad || isWave);
    m_stepsLabel->setVisible(isWave);
    m_steps->setVisible(isWave);
    Q_EMIT changed();
}

} // namespace ui
