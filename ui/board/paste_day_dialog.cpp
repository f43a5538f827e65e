#include "ui/board/paste_day_dialog.h"

#include "core/notation/set_line.h"
#include "ui/look/date_field.h"
#include "ui/look/form_parts.h"
#include "ui/roster/open_roster.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>
#include <set>

namespace ui {

namespace {

constexpr int kId = Qt::UserRole;
constexpr int kRemarkLines = 5;

/// Days that the rows reach beyond the first one.
int span(const CopiedDay &day)
{
    return std::ranges::max(day.rows, {}, &core::CardRow::offset).offset;
}

} // namespace

PasteDayDialog::PasteDayDialog(
    OpenRoster &roster, CopiedDay day, QDate onto, core::LifterId selected, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_day(std::move(day))
    , m_who(named("who", new QComboBox))
    , m_lifters(named("lifters", new QListWidget))
    , m_onto(named("onto", new DateField(onto, tr("Day"))))
    , m_occupied(named("occupied", new QComboBox))
    , m_remarks(named("remarks", new QPlainTextEdit))
{
    setWindowTitle(tr("Paste the day onto lifters"));
    resize(560, 520);
    m_who->addItem(tr("Choose one by one"));
    m_who->addItem(m_day.from.isValid() ? tr("All other lifters") : tr("All lifters"));
    m_who->addItem(tr("Nobody"));
    std::set<QString> groups;
    for (const core::Lifter &lifter : roster.lifters()) {
        if (lifter.archived)
            continue;
        auto *item = new QListWidgetItem(lifter.name, m_lifters);
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        item->setCheckState(
            lifter.id == selected && lifter.id != m_day.from ? Qt::Checked : Qt::Unchecked);
        item->setData(kId, lifter.id.value);
        groups.insert(lifter.groups.begin(), lifter.groups.end());
    }
    for (const QString &group : groups)
        m_who->addItem(tr("Group %1").arg(group), group);
    m_lifters->setAccessibleName(tr("Lifters who get the day"));
    m_occupied->addItem(tr("goes below what is planned there"), int(core::OnOccupiedDays::keep));
    m_occupied->addItem(
        tr("takes the place of what is planned there"), int(core::OnOccupiedDays::replace));
    m_remarks->setReadOnly(true);
    m_remarks->setTabChangesFocus(true);
    m_remarks->setAccessibleName(tr("What comes of it"));
    m_remarks->setMinimumHeight(kRemarkLines * m_remarks->fontMetrics().lineSpacing());

    QStringList copied;
    for (const core::CardRow &row : m_day.rows)
        if (const core::Variation *variation = roster.variation(row.variation))
            copied << tr("%1 %2").arg(variation->name, core::onOneRow(row.setLine)).trimmed();
    auto *form = new QFormLayout;
    addRow(form, tr("Copied"), m_lifters, plainWords(copied.join(u'\n')));
    addRow(form, tr("&For"), m_who, m_who);
    addRow(form, tr("&Lifters"), m_lifters, m_lifters);
    addRow(form, tr("&Day"), m_onto, inRow({m_onto}));
    addRow(form, tr("On days with cards &it"), m_occupied, m_occupied);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_paste = buttons->addButton(tr("&Paste"), QDialogButtonBox::AcceptRole);
    fill(this, columnLayout({form, m_remarks, buttons}, space::group),
        {space::page, space::page, space::page, space::group});

    connect(buttons, &QDialogButtonBox::accepted, this, &PasteDayDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PasteDayDialog::reject);
    connect(m_who, &QComboBox::currentIndexChanged, this, &PasteDayDialog::tickGroup);
    connect(m_lifters, &QListWidget::itemChanged, this, [this] {
        m_who->setCurrentIndex(0);
        showWhatComes();
    });
    connect(m_occupied, &QComboBox::currentIndexChanged, this, &PasteDayDialog::showWhatComes);
    connect(m_onto, &DateField::edited, this, &PasteDayDialog::readDay);
    readDay();
}

void PasteDayDialog::readDay()
{
    const QDate first = m_onto->date();
    const QDate last = first.addDays(span(m_day));
    m_cards = m_roster.cards(first, last);
    m_checkIns = m_roster.checkInsFor(first, last);
    showWhatComes();
}

void PasteDayDialog::tickGroup(int answer)
{
    if (answer == 0)
        return;
    const QString group = m_who->itemData(answer).toString();
    const QSignalBlocker quiet(m_lifters);
    for (int row = 0; row < m_lifters->count(); ++row) {
        QListWidgetItem *item = m_lifters->item(row);
        const core::Lifter *lifter = m_roster.lifter({item->data(kId).toLongLong()});
        const bool isMeant = lifter->id != m_day.from // who has the day, and is ticked by hand only
            && (group.isEmpty() ? answer == 1 : lifter->groups.contains(group));
        item->setCheckState(isMeant ? Qt::Checked : Qt::Unchecked);
    }
    showWhatComes();
}

core::PastedCards PasteDayDialog::pasted()
{
    std::vector<core::PasteTarget> targets;
    for (int row = 0; row < m_lifters->count(); ++row) {
        const QListWidgetItem *item = m_lifters->item(row);
        const core::Lifter *lifter = m_roster.lifter({item->data(kId).toLongLong()});
        if (item->checkState() != Qt::Checked || !lifter)
            continue;
        core::PasteTarget target{*lifter, m_onto->date(), {}, m_checkIns};
        std::ranges::copy_if(m_cards, std::back_inserter(target.cards),
            [lifter](const core::Card &card) { return card.lifter == lifter->id; });
        targets.push_back(std::move(target));
    }
    return core::pasteCards(m_day.rows, m_day.from, targets,
        core::OnOccupiedDays(m_occupied->currentData().toInt()), m_roster.variations(),
        [this] { return m_roster.newId<core::Card>(); });
}

void PasteDayDialog::showWhatComes()
{
    const core::PastedCards made = pasted();
    QStringList said;
    said << (made.cards.size() == 1 ? tr("1 card is laid.")
                                    : tr("%1 cards are laid.").arg(made.cards.size()));
    said << made.remarks;
    m_remarks->setPlainText(said.join(u'\n'));
    m_paste->setEnabled(!made.edit.isEmpty());
}

void PasteDayDialog::accept()
{
    const core::PastedCards made = pasted();
    std::set<core::LifterId> lifters;
    for (const core::Card &card : made.cards)
        lifters.insert(card.lifter);
    const QString step = tr("Paste the day of %1 onto %2 lifters")
                             .arg(QLocale().toString(m_onto->date(), tr("d MMM")))
                             .arg(lifters.size());
    if (m_roster.perform(step, made.edit))
        QDialog::accept();
}

} // namespace ui
