#include "ui/checks/accept_dialog.h"

#include "core/domain/visible_text.h"
#include "ui/look/form_parts.h"
#include "ui/roster/open_roster.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <algorithm>

namespace ui {

namespace {

constexpr int kWidth = 560;
constexpr int kMostHeight = 360;

} // namespace

AcceptDialog::AcceptDialog(const QStringList &findings, bool needsNote, QWidget *parent)
    : AcceptDialog({Group{{}, {}, findings}}, needsNote, parent)
{
}

AcceptDialog::AcceptDialog(const std::vector<core::OpenStop> &stops, QWidget *parent)
    : AcceptDialog(byLifter(stops), true, parent)
{
}

std::vector<AcceptDialog::Group> AcceptDialog::byLifter(const std::vector<core::OpenStop> &stops)
{
    std::vector<Group> groups;
    for (const core::OpenStop &stop : stops) {
        const core::LifterId lifter = stop.finding.key.lifter;
        auto group = std::ranges::find(groups, lifter, &Group::lifter);
        if (group == groups.end())
            group = groups.insert(group, {lifter, stop.lifter, {}});
        group->findings << core::words(stop);
    }
    return groups;
}

AcceptDialog::AcceptDialog(const std::vector<Group> &groups, bool needsNote, QWidget *parent)
    : QDialog(parent)
    , m_needsNote(needsNote)
    , m_sameForAll(named("sameForAll", new QCheckBox(tr("The &same note for all of them"))))
{
    setWindowTitle(tr("Stopped by the plan checks"));
    setMinimumWidth(kWidth);
    const bool areSeveral = groups.size() > 1;
    auto *list = new QVBoxLayout;
    auto *below = new QVBoxLayout; // what is always in sight: the one note
    int height = 0;
    for (const Group &group : groups) {
        QLabel *findings =
            named("findings", plainWords(group.findings.join(QStringLiteral("\n\n"))));
        auto *note = named("note", new QLineEdit);
        auto *form = new QFormLayout;
        form->setRowWrapPolicy(QFormLayout::WrapAllRows);
        addRow(form,
            areSeveral      ? tr("Why is it right here?")
                : needsNote ? tr("&Why is it right here?")
                            : tr("&Why is it right here? (optional)"),
            note, note);
        if (areSeveral)
            note->setAccessibleName(tr("Why it is right for %1").arg(group.name));
        list->addWidget(findings);
        (areSeveral ? list : below)->addLayout(form);
        list->addSpacing(space::gap);
        height += findings->heightForWidth(kWidth) + space::group
            + (areSeveral ? 2 * space::field + space::group : 0);
        m_notes.emplace_back(group.lifter, note);
        connect(note, &QLineEdit::textChanged, this, &AcceptDialog::refresh);
    }
    list->addStretch(1);
    auto *area = new QScrollArea;
    setUpForScrolling(*area, boxed(list));
    area->setAccessibleName(tr("What the checks found"));
    area->setMinimumHeight(std::min(height, kMostHeight));
    QLabel *rest = plainWords(tr("Who has no note here gets nothing yet."));

    auto *buttons = new QDialogButtonBox;
    m_accept = buttons->addButton(
        areSeveral ? tr("&Accept with these notes") : tr("&Accept with this note"),
        QDialogButtonBox::AcceptRole);
    QPushButton *back = buttons->addButton(tr("&Go back"), QDialogButtonBox::RejectRole);
    m_accept->setObjectName(QStringLiteral("accept"));
    back->setAutoDefault(false);
    m_accept->setDefault(true);
    fill(this, columnLayout({{area, 1}, below, m_sameForAll, rest, buttons}, space::group),
        {space::page, space::page, space::page, space::group});
    rest->setVisible(areSeveral);
    m_sameForAll->setVisible(areSeveral);
    m_notes.front().second->setFocus();

    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_sameForAll, &QCheckBox::toggled, this, &AcceptDialog::refresh);
    refresh();
}

void AcceptDialog::refresh()
{
    for (const auto &[lifter, field] : m_notes)
        field->setEnabled(field == m_notes.front().second || !m_sameForAll->isChecked());
    m_accept->setEnabled(!m_needsNote || !notes().empty());
}

QString AcceptDialog::noteIn(const QLineEdit &field) const
{
    const QLineEdit &meant = m_sameForAll->isChecked() ? *m_notes.front().second : field;
    return meant.text().trimmed();
}

QString AcceptDialog::note() const
{
    return noteIn(*m_notes.front().second);
}

std::map<core::LifterId, QString> AcceptDialog::notes() const
{
    std::map<core::LifterId, QString> written;
    for (const auto &[lifter, field] : m_notes)
        if (const QString note = noteIn(*field); core::hasVisibleText(note))
            written.emplace(lifter, note);
    return written;
}

bool acceptStops(OpenRoster &roster, const std::vector<core::OpenStop> &stops,
    const std::map<core::LifterId, QString> &notes)
{
    core::Edit edit;
    for (const auto &[lifter, note] : notes) {
        std::vector<core::OpenStop> own;
        std::ranges::copy_if(stops, std::back_inserter(own),
            [id = lifter](const core::OpenStop &stop) { return stop.finding.key.lifter == id; });
        edit = core::joined(std::move(edit),
            core::accept(own, note, roster.waivers(lifter),
                [&roster] { return roster.newId<core::Waiver>(); }));
    }
    return roster.perform(AcceptDialog::tr("Accept what the checks stop"), edit);
}

} // namespace ui
