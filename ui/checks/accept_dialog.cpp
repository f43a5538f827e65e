#include "ui/checks/accept_dialog.h"

#include "core/domain/visible_text.h"
#include "ui/look/form_parts.h"
#include "ui/roster/open_roster.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <set>

namespace ui {

namespace {

constexpr int kWidth = 560;
constexpr int kMostHeight = 300;

QStringList inWords(const std::vector<core::OpenStop> &stops)
{
    QStringList said;
    for (const core::OpenStop &stop : stops)
        said << core::words(stop);
    return said;
}

} // namespace

AcceptDialog::AcceptDialog(const QStringList &findings, bool needsNote, QWidget *parent)
    : QDialog(parent)
    , m_note(named("note", new QLineEdit))
{
    setWindowTitle(tr("Stopped by the plan checks"));
    setMinimumWidth(kWidth);
    QLabel *list = named("findings", plainWords(findings.join(QStringLiteral("\n\n"))));
    auto *area = new QScrollArea;
    setUpForScrolling(*area, boxed(columnLayout({list, Stretch{1}})));
    area->setAccessibleName(tr("What the checks found"));
    area->setMinimumHeight(std::min(list->heightForWidth(kWidth) + space::group, kMostHeight));

    auto *form = new QFormLayout;
    addRow(form, needsNote ? tr("&Why is it right here?") : tr("&Why is it right here? (optional)"),
        m_note, m_note);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);

    auto *buttons = new QDialogButtonBox;
    m_accept = buttons->addButton(tr("&Accept with this note"), QDialogButtonBox::AcceptRole);
    QPushButton *back = buttons->addButton(tr("&Go back"), QDialogButtonBox::RejectRole);
    m_accept->setObjectName(QStringLiteral("accept"));
    back->setAutoDefault(false);
    m_accept->setDefault(true);
    m_accept->setEnabled(!needsNote);
    fill(this, columnLayout({{area, 1}, form, buttons}, space::group),
        {space::page, space::page, space::page, space::group});
    m_note->setFocus();

    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_note, &QLineEdit::textChanged, this,
        [this, needsNote] { m_accept->setEnabled(!needsNote || core::hasVisibleText(note())); });
}

AcceptDialog::AcceptDialog(const std::vector<core::OpenStop> &stops, QWidget *parent)
    : AcceptDialog(inWords(stops), true, parent)
{
}

QString AcceptDialog::note() const
{
    return m_note->text().trimmed();
}

bool acceptStops(OpenRoster &roster, const std::vector<core::OpenStop> &stops, const QString &note)
{
    std::set<core::LifterId> lifters;
    for (const core::OpenStop &stop : stops)
        lifters.insert(stop.finding.key.lifter);
    std::vector<core::Waiver> waivers;
    for (const core::LifterId lifter : lifters)
        for (core::Waiver &waiver : roster.waivers(lifter))
            waivers.push_back(std::move(waiver));
    return roster.perform(AcceptDialog::tr("Accept what the checks stop"),
        core::accept(stops, note, waivers, [&roster] { return roster.newId<core::Waiver>(); }));
}

} // namespace ui
