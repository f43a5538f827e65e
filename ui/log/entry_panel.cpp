#include "ui/log/entry_panel.h"

#include "core/domain/touch_score.h"
#include "core/notation/notation_help.h"
#include "ui/log/entry_field.h"
#include "ui/log/log_desk.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/keep_question.h"
#include "ui/look/words_label.h"

#include <QAccessible>
#include <QComboBox>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <algorithm>
#include <memory>

namespace ui {

namespace {
constexpr int kVariationWidth = 220;
}

EntryPanel::EntryPanel(LogDesk &desk, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_title(named("setAtHand", new ElidedLabel))
    , m_variation(named("variation", new QComboBox))
    , m_field(named("entry", new EntryField))
    , m_preview(named("preview", new FieldNote(FieldNote::Kind::explanation)))
    , m_refusal(named("refusal", new FieldNote(FieldNote::Kind::problem)))
    , m_question(new KeepQuestion(KeepQuestion::Keys::field))
{
    m_title->setFont(ui::font(Type::heading, font()));
    m_title->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_field->setFont(ui::font(Type::heading, font()));
    m_field->setAccessibleName(tr("What was done"));
    m_variation->setFixedWidth(kVariationWidth);
    m_variation->installEventFilter(this);
    m_preview->setFont(font());
    m_refusal->setFont(font());

    auto *buddy = new QLabel(tr("Variatio&n"));
    buddy->setBuddy(m_variation);
    buddy->setMinimumWidth(buddy->sizeHint().width() + space::tight);
    FieldNote *help = explain(
        tr("Write only what was different: 100x5 or x4 for load and reps, +2.5 or -5 from "
           "the plan, 8.5 for the RPE, t3 for the touch, x3 miss, ; and a note. Touch: %1.\n"
           "Enter saves and goes on, Up and Down go to other sets, Insert adds one, Delete "
           "takes one out, Alt+N changes the variation, Esc empties the field, Ctrl+Z takes "
           "back.")
            .arg(core::touchScale()));
    fill(this,
        columnLayout({m_title, rowLayout({{m_field, 1}, buddy, m_variation}, space::gap), m_refusal,
                         m_question, m_preview, help},
            space::tight));
    setFocusProxy(m_field);
    new HelpSection(tr("Entry of a set"), entryKeys, this);
    new HelpSection(
        tr("What can be written of a set: only what was different"),
        [] { return formRows(core::setEntryForms()); }, this);

    connect(m_field, &QLineEdit::textChanged, this, [this](const QString &text) {
        m_desk.setText(text);
        m_refusal->say({});
        m_question->hide();
        preview();
    });
    connect(m_field, &QLineEdit::returnPressed, this,
        [this] { refuse(m_question->isVisible() ? m_desk.keep() : m_desk.take()); });
    connect(m_question, &KeepQuestion::kept, this, [this] { refuse(m_desk.keep()); });
    connect(m_question, &KeepQuestion::changeWanted, this, [this] { m_field->setFocus(); });
    connect(m_field, &EntryField::stepped, this, [this](int lines) { refuse(m_desk.step(lines)); });
    connect(m_field, &EntryField::sideways, this, &EntryPanel::sideways);
    connect(m_field, &EntryField::extraWanted, this, [this] { refuse(m_desk.beginExtra()); });
    connect(m_field, &EntryField::givenUp, &m_desk, &LogDesk::giveUp);
    connect(m_field, &EntryField::deleteWanted, this, [this] { m_desk.remove(); });
    connect(m_variation, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (index >= 0)
            m_desk.setVariation(m_offered[size_t(index)]);
    });
}

void EntryPanel::show(const std::vector<core::Variation> &catalogue, const QString &whose)
{
    const std::vector<LogLine> &lines = m_desk.lines();
    setEnabled(!lines.empty());
    if (lines.empty())
        return;
    const LogLine &line = lines[m_desk.current()];
    const QString number = tr("Set %1 of %2").arg(m_desk.current() + 1).arg(lines.size());
    const QString set = m_desk.isLogged()
        ? tr("%1, logged: %2, %3").arg(number, line.variation, line.did)
        : m_desk.isOffered()
        ? (lines.size() == 1 ? tr("First set: %1") : tr("Another set: %1")).arg(line.variation)
        : m_desk.isExtra() ? tr("%1, extra: %2").arg(number, line.variation)
                           : tr("%1: %2, %3").arg(number, line.variation, line.asked);
    m_title->setText(whose.isEmpty() ? set : tr("%1 – %2").arg(whose, set));
    m_field->setAccessibleName(
        whose.isEmpty() ? tr("What was done") : tr("What %1 did").arg(whose));
    m_field->setAccessibleDescription(m_title->text());
    fillVariations(catalogue);
    if (m_field->text() != m_desk.text())
        m_field->setText(m_desk.text());
    m_refusal->say({});
    m_question->hide();
    preview();
}

void EntryPanel::fillVariations(const std::vector<core::Variation> &catalogue)
{
    const QSignalBlocker quiet(m_variation);
    const core::VariationId now = m_desk.variation();
    std::vector<core::VariationId> offered;
    for (const core::Variation &variation : catalogue)
        if (!variation.retired || variation.id == now)
            offered.push_back(variation.id);
    if (offered != m_offered) {
        m_offered = offered;
        m_variation->clear();
        for (const core::Variation &variation : catalogue)
            if (!variation.retired || variation.id == now)
                m_variation->addItem(variation.name);
    }
    for (size_t i = 0; i < m_offered.size(); ++i)
        if (m_offered[i] == now)
            m_variation->setCurrentIndex(int(i));
}

QString EntryPanel::whatIsLeft() const
{
    const bool isLeftOut = std::ranges::any_of(
        m_desk.lines(), [](const LogLine &line) { return line.state == LineState::leftOut; });
    return isLeftOut ? tr("No planned set is left to do.") : tr("All planned sets are logged.");
}

void EntryPanel::preview()
{
    if (m_desk.lines().empty())
        return;
    const core::EntryReading reading = m_desk.reading();
    const bool isBlank = m_desk.text().trimmed().isEmpty();
    if (isBlank && !m_desk.withheld().isEmpty())
        m_preview->say(tr("%1 If the set was done all the same, write its load and reps.")
                           .arg(m_desk.withheld()));
    else if (isBlank && m_desk.isOffered() && m_desk.lines().size() > 1)
        m_preview->say(
            whatIsLeft() + u' ' + tr("What you write is added as a set; Up goes to the others."));
    else if (reading.error)
        m_preview->say(isBlank ? reading.error->words : tr("…"));
    else if (isBlank && m_desk.isLogged())
        m_preview->say(tr("Enter goes on; what you write changes the set."));
    else
        m_preview->say(tr("Enter saves %1").arg(m_desk.words(reading.entry)));
}

void EntryPanel::refuse(const std::optional<core::EntryError> &error)
{
    if (!error)
        return;
    m_preview->say({});
    m_field->setFocus();
    if (!m_desk.question().isEmpty()) {
        m_question->ask(error->words);
        return;
    }
    m_refusal->say(error->words);
    m_field->setCursorPosition(std::min(error->position, int(m_field->text().size())));
    m_field->setAccessibleDescription(error->words);
    QAccessible::updateAccessibility(
        std::make_unique<QAccessibleEvent>(m_field, QAccessible::Alert).get());
}

bool EntryPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_variation && event->type() == QEvent::Wheel)
        return true; // scrolling past is no choice
    if (watched == m_variation && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape) {
            m_field->setFocus();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ui
