#include "ui/roster/open_roster.h"

#include <QScopedValueRollback>
#include <QUndoCommand>
#include <algorithm>
#include <utility>

namespace ui {

namespace {

/// What was done. It changes nothing: the roster is written before the stack moves, since a stack
/// cannot keep a step whose undo failed.
class Step final : public QUndoCommand
{
public:
    Step(const QString &name, core::Edit edit, QString series)
        : QUndoCommand(name)
        , m_edit(std::move(edit))
        , m_series(std::move(series))
    {
    }

    [[nodiscard]] const core::Edit &edit() const { return m_edit; }

    [[nodiscard]] int id() const override { return m_series.isEmpty() ? -1 : 0; }
    bool mergeWith(const QUndoCommand *command) override
    {
        const auto *next = static_cast<const Step *>(command);
        if (next->m_series != m_series)
            return false;
        m_edit = core::followedBy(m_edit, next->m_edit);
        setObsolete(m_edit.isEmpty()); // back where it began
        return true;
    }

private:
    core::Edit m_edit;
    QString m_series;
};

template <class Row, class Id> const Row *find(const std::vector<Row> &rows, Id id)
{
    const auto it =
        std::find_if(rows.begin(), rows.end(), [id](const Row &r) { return r.id == id; });
    return it == rows.end() ? nullptr : &*it;
}

} // namespace

OpenRoster::OpenRoster(std::unique_ptr<core::RosterStore> store, Today &today, QObject *parent)
    : QObject(parent)
    , m_store(std::move(store))
    , m_today(today)
    , m_lifters(m_store->lifters())
    , m_variations(m_store->variations())
    , m_templates(m_store->templates())
{
    m_store->setListener([this](const core::RosterChange &change) { tellOf(change); });
}

bool OpenRoster::perform(
    const QString &name, const core::Edit &edit, const QString &series, const core::Edit &facts)
{
    if (edit.isEmpty())
        return record(facts);
    const auto change = write(core::joined(edit, facts));
    if (!change)
        return false;
    m_steps.push(new Step(name, edit, series));
    tellOf(*change);
    return true;
}

bool OpenRoster::record(const core::Edit &facts)
{
    if (facts.isEmpty())
        return true;
    const auto change = write(facts);
    if (change)
        tellOf(*change);
    return change.has_value();
}

bool OpenRoster::settle()
{
    QStringList left;
    Q_EMIT settling(&left);
    return left.isEmpty();
}

QStringList OpenRoster::halfTyped()
{
    QStringList left;
    Q_EMIT settling(&left);
    Q_EMIT closing(&left);
    return left;
}

bool OpenRoster::undo()
{
    if (!settle())
        return false;
    const auto *step = static_cast<const Step *>(m_steps.command(m_steps.index() - 1));
    const auto change = step ? write(core::inverse(step->edit())) : std::nullopt;
    if (!change)
        return false;
    m_steps.undo();
    tellOf(*change);
    return true;
}

bool OpenRoster::redo()
{
    if (!settle())
        return false;
    const auto *step = static_cast<const Step *>(m_steps.command(m_steps.index()));
    const auto change = step ? write(step->edit()) : std::nullopt;
    if (!change)
        return false;
    m_steps.redo();
    tellOf(*change);
    return true;
}

std::optional<core::RosterChange> OpenRoster::write(const core::Edit &edit)
{
    try {
        if (m_telling)
            throw core::StorageError(tr(
                "This was not done, since another change was just being shown. Do it once more."));
        m_store->apply(edit);
        return core::changeBy(edit);
    } catch (const core::StorageError &e) {
        Q_EMIT failed(e.words(), e.detail());
        return std::nullopt;
    }
}

void OpenRoster::tellOf(const core::RosterChange &change)
{
    const QScopedValueRollback telling(m_telling, true);
    Q_EMIT stored();
    readAgain(change);
    Q_EMIT changed(change);
}

void OpenRoster::readAgain(const core::RosterChange &change)
{
    try {
        if (change.has<core::Lifter>())
            m_lifters = m_store->lifters();
        if (change.has<core::Variation>())
            m_variations = m_store->variations();
        if (change.has<core::BlockTemplate>())
            m_templates = m_store->templates();
    } catch (const core::StorageError &e) {
        Q_EMIT failed(tr("The change is stored, but it could not be read back: what is shown may "
                         "be as it was before. Close the roster and open it again. %1")
                          .arg(e.words()),
            e.detail());
    }
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
    return reading([&] { return m_store->cards(lifter, from, to); });
}

std::vector<core::Card> OpenRoster::cards(QDate from, QDate to)
{
    return reading([&] { return m_store->cards(from, to); });
}

std::vector<core::LoggedSession> OpenRoster::sessions(core::LifterId lifter)
{
    return reading([&] { return m_store->sessions(lifter); });
}

std::vector<core::LoggedSession> OpenRoster::sessions()
{
    return reading([&] { return m_store->sessions(); });
}

std::vector<core::CheckIn> OpenRoster::checkIns(core::LifterId lifter)
{
    return reading([&] { return m_store->checkIns(lifter); });
}

std::vector<core::CheckIn> OpenRoster::checkIns()
{
    return reading([&] { return m_store->checkIns(); });
}

std::vector<core::CheckIn> OpenRoster::checkInsFor(QDate from, QDate to)
{
    return reading([&] { return m_store->checkInsFor(from, to); });
}

std::vector<core::Block> OpenRoster::blocks(core::LifterId lifter)
{
    return reading([&] { return m_store->blocks(lifter); });
}

std::vector<core::Block> OpenRoster::blocks()
{
    return reading([&] { return m_store->blocks(); });
}

std::vector<core::Waiver> OpenRoster::waivers(core::LifterId lifter)
{
    return reading([&] { return m_store->waivers(lifter); });
}

std::vector<core::GivenDay> OpenRoster::given(core::LifterId lifter)
{
    return reading([&] { return m_store->given(lifter); });
}

std::vector<core::GivenDay> OpenRoster::given(QDate from, QDate to)
{
    return reading([&] { return m_store->given(from, to); });
}

} // namespace ui
