#include "ui/roster/open_roster.h"

#include "core/domain/storage_error.h"

#include <QUndoCommand>
#include <algorithm>

namespace ui {

/// Undo step of any coach action. A failed step marks itself obsolete and the stack drops it.
class OpenRoster::ApplyEdit final : public QUndoCommand
{
public:
    ApplyEdit(OpenRoster &roster, const QString &name, const core::Edit &edit)
        : QUndoCommand(name)
        , m_roster(roster)
        , m_edit(edit)
    {
    }
    void redo() override { run(m_edit); }
    void undo() override { run(core::inverse(m_edit)); }

private:
    void run(const core::Edit &edit)
    {
        if (!m_roster.apply(edit))
            setObsolete(true);
    }

    OpenRoster &m_roster;
    core::Edit m_edit;
};

namespace {

template <class Row, class Id> const Row *find(const std::vector<Row> &rows, Id id)
{
    const auto it =
        std::find_if(rows.begin(), rows.end(), [id](const Row &r) { return r.id == id; });
    return it == rows.end() ? nullptr : &*it;
}

template <class Row> core::LifterId lifterOf(const Row &row)
{
    return row.lifter;
}
core::LifterId lifterOf(const core::Waiver &waiver)
{
    return waiver.key.lifter;
}

template <class Row> QSet<core::LifterId> liftersOf(const core::RowChange<Row> &change)
{
    QSet<core::LifterId> ids;
    for (const Row &row : change.before)
        ids.insert(lifterOf(row));
    for (const Row &row : change.after)
        ids.insert(lifterOf(row));
    return ids;
}

} // namespace

OpenRoster::OpenRoster(core::RosterFile file, QObject *parent)
    : QObject(parent)
    , m_file(std::move(file))
    , m_lifters(m_file.lifters())
    , m_variations(m_file.variations())
    , m_templates(m_file.templates())
{
}

bool OpenRoster::perform(const QString &name, const core::Edit &edit)
{
    if (edit.isEmpty())
        return true;
    const int steps = m_undo.index();
    m_undo.push(new ApplyEdit(*this, name, edit));
    return m_undo.index() > steps;
}

const core::Lifter *OpenRoster::lifter(core::LifterId id) const
{
    return find(m_lifters, id);
}

const core::Variation *OpenRoster::variation(core::VariationId id) const
{
    return find(m_variations, id);
}

template <class Read> auto OpenRoster::reading(Read read) -> decltype(read())
try {
    return read();
} catch (const core::StorageError &e) {
    Q_EMIT failed(e.words(), e.detail());
    return {};
}

std::vector<core::Card> OpenRoster::cards(core::LifterId lifter, QDate from, QDate to)
{
    return reading([&] { return m_file.cards(lifter, from, to); });
}

std::vector<core::Card> OpenRoster::cards(QDate from, QDate to)
{
    return reading([&] { return m_file.cards(from, to); });
}

std::vector<core::LoggedSession> OpenRoster::sessions(core::LifterId lifter)
{
    return reading([&] { return m_file.sessions(lifter); });
}

std::vector<core::LoggedSession> OpenRoster::sessions()
{
    return reading([&] { return m_file.sessions(); });
}

std::vector<core::CheckIn> OpenRoster::checkIns(core::LifterId lifter)
{
    return reading([&] { return m_file.checkIns(lifter); });
}

std::vector<core::CheckIn> OpenRoster::checkIns()
{
    return reading([&] { return m_file.checkIns(); });
}

std::vector<core::Block> OpenRoster::blocks(core::LifterId lifter)
{
    return reading([&] { return m_file.blocks(lifter); });
}

std::vector<core::Block> OpenRoster::blocks()
{
    return reading([&] { return m_file.blocks(); });
}

std::vector<core::Waiver> OpenRoster::waivers(core::LifterId lifter)
{
    return reading([&] { return m_file.waivers(lifter); });
}

bool OpenRoster::apply(const core::Edit &edit)
try {
    m_file.apply(edit);
    reload(edit);
    return true;
} catch (const core::StorageError &e) {
    Q_EMIT failed(e.words(), e.detail());
    return false;
}

void OpenRoster::reload(const core::Edit &edit)
{
    if (!edit.lifters.isEmpty()) {
        m_lifters = m_file.lifters();
        Q_EMIT liftersChanged();
    }
    if (!edit.variations.isEmpty()) {
        m_variations = m_file.variations();
        Q_EMIT variationsChanged();
    }
    if (!edit.cards.isEmpty())
        Q_EMIT cardsChanged(liftersOf(edit.cards));
    if (!edit.sessions.isEmpty())
        Q_EMIT sessionsChanged(liftersOf(edit.sessions));
    if (!edit.checkIns.isEmpty())
        Q_EMIT checkInsChanged(liftersOf(edit.checkIns));
    if (!edit.templates.isEmpty()) {
        m_templates = m_file.templates();
        Q_EMIT templatesChanged();
    }
    if (!edit.blocks.isEmpty())
        Q_EMIT blocksChanged(liftersOf(edit.blocks));
    if (!edit.waivers.isEmpty())
        Q_EMIT waiversChanged(liftersOf(edit.waivers));
}

} // namespace ui
