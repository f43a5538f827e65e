#include "ui/board/card_editing.h"

#include "core/notation/set_line_check.h"
#include "ui/board/card_widget.h"
#include "ui/board/week_plan.h"

namespace ui {

namespace {

std::optional<CardEditor::Refusal> checkSets(
    const QString &text, core::Lift lift, const std::vector<core::Variation> &catalogue)
{
    const core::ParsedSetLines parsed = core::parseSetLines(text, lift, catalogue);
    if (!parsed.error)
        return std::nullopt;
    const QStringList rows = text.split(u'\n');
    int position = parsed.error->column - 1;
    for (int row = 0; row + 1 < parsed.error->line; ++row)
        position += int(rows[row].size()) + 1;
    return CardEditor::Refusal{position, parsed.error->words};
}

std::optional<CardEditor::Refusal> checkNote(const QString &)
{
    return std::nullopt;
}

} // namespace

CardEditing::CardEditing(WeekPlan &plan, QWidget &board)
    : m_plan(plan)
    , m_board(board)
{
    connect(&plan, &WeekPlan::settling, this, [this](QStringList *left) {
        if (m_editor && !m_editor->settle())
            *left << tr("%1: %2").arg(m_editor->accessibleName(), m_editor->toPlainText());
    });
    connect(&plan, &WeekPlan::changed, this, [this] {
        if (m_editor && !m_plan.places().placeOf(m_card))
            m_editor->deleteLater();
    });
}

bool CardEditing::finish()
{
    return !m_editor || m_editor->take();
}

void CardEditing::open(const CardWidget &card, Field field, const QString &typed)
{
    const CardView &view = card.card();
    const bool isSets = field == Field::sets;
    m_card = view.id;
    m_field = field;
    const CardEditor::Check checkCard = [this, kept = view.setLine, lift = view.lift](
                                            const QString &text) {
        return check(text, kept, lift);
    };
    m_editor = new CardEditor(
        isSets ? checkCard : checkNote, [this](const QString &text) { return store(text); },
        isSets ? tr("Sets of %1").arg(view.name) : tr("Note on %1").arg(view.name), &m_board,
        m_board.window());
    connect(m_editor, &CardEditor::left, this, [this, id = view.id] { Q_EMIT left(id); });
    if (isSets)
        m_editor->setCompletions([this](const QString &text, int cursor) {
            return core::completions(text, cursor, m_plan.catalogue());
        });
    moveOver(card);
    m_editor->open(isSets ? view.setLine : view.note, typed);
}

std::optional<CardEditor::Refusal> CardEditing::check(
    const QString &text, const QString &kept, core::Lift lift) const
{
    if (auto refusal = checkSets(text, lift, m_plan.catalogue()))
        return refusal;
    const QString sets = core::setLineText(core::parseSetLines(text).lines);
    if (sets == kept) // it was asked about, if it was to be
        return std::nullopt;
    const QString why = m_plan.whyFarAbove(m_card, sets);
    return why.isEmpty() ? std::nullopt
                         : std::optional(CardEditor::Refusal{int(text.size()), why, true});
}

void CardEditing::moveOver(const CardWidget &card)
{
    if (!m_editor)
        return;
    const QRect field = m_field == Field::sets ? card.setsField() : card.noteField();
    m_editor->moveTo(field.translated(card.pos()).adjusted(-4, -3, 4, 3));
}

bool CardEditing::store(const QString &text)
{
    if (m_field == Field::note)
        return m_plan.setNote(m_card, text.trimmed());
    return m_plan.setSetLine(m_card, core::setLineText(core::parseSetLines(text).lines));
}

} // namespace ui
