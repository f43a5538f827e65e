#include "ui/planning/block_ribbon.h"

#include "core/domain/language.h"
#include "core/domain/week.h"
#include "core/log/given_score.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <iterator>

namespace ui {

namespace {

constexpr int kWeeks = 14;

int rowHeight(const QWidget &widget)
{
    return QFontMetrics(ui::font(Type::small, widget.font())).height() + 2 * space::hair;
}

/// A disc with a tick, half a disc, a ring.
void paintMark(QPainter &painter, WeekMark mark, const QRectF &box, const QColor &ink)
{
    painter.setPen(QPen(ink, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(box);
    if (mark == WeekMark::partly) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink);
        painter.drawPie(box, 90 * 16, 180 * 16);
    } else if (mark == WeekMark::done) {
        const QPointF tick[] = {{box.left() + 0.25 * box.width(), box.top() + 0.55 * box.height()},
            {box.left() + 0.45 * box.width(), box.top() + 0.75 * box.height()},
            {box.left() + 0.78 * box.width(), box.top() + 0.28 * box.height()}};
        painter.drawPolyline(tick, 3);
    }
}

/// The marks after the count: a rep missed, sets beside the plan, pain.
QString signs(const core::WeekOutcome &outcome)
{
    QString signs;
    if (outcome.missed > 0)
        signs += QChar(0x00d7);
    if (outcome.adherence.extra > 0)
        signs += u'+';
    if (outcome.hasPain)
        signs += u'!';
    return signs;
}

/// What the second row of a week says: of one that is over what was done, else what is planned.
QString wordsBelow(const RibbonWeek &week)
{
    if (week.meet)
        return BlockRibbon::tr("meet");
    if (week.deload)
        return BlockRibbon::tr("deload");
    if (markOf(week) != WeekMark::none)
        return BlockRibbon::tr("%1/%2")
            .arg(week.outcome->adherence.done)
            .arg(week.outcome->adherence.sets);
    return week.cards == 0 ? QStringLiteral("\u2013") : QLocale().toString(week.lifts);
}

/// The second row of a week, centred: mark, words, signs.
void paintBelow(QPainter &painter, const RibbonWeek &week, const QRect &row, const QColor &ink)
{
    const QFontMetrics metrics = painter.fontMetrics();
    const WeekMark mark = markOf(week);
    const QString after = week.outcome ? signs(*week.outcome) : QString();
    const int markWidth = mark == WeekMark::none ? 0 : metrics.ascent() + space::hair;
    const int afterWidth = after.isEmpty() ? 0 : metrics.horizontalAdvance(after) + space::hair;
    const QString words =
        metrics.elidedText(wordsBelow(week), Qt::ElideRight, row.width() - markWidth - afterWidth);
    const int wordsWidth = metrics.horizontalAdvance(words);
    int x = row.left() + (row.width() - markWidth - wordsWidth - afterWidth) / 2;
    if (mark != WeekMark::none) {
        const double side = metrics.ascent() - 2.0;
        paintMark(painter, mark, {x + 0.5, row.center().y() - side / 2.0 + 0.5, side, side}, ink);
        x += markWidth;
    }
    painter.setPen(ink);
    painter.drawText(QRect(x, row.top(), wordsWidth + 1, row.height()), Qt::AlignVCenter, words);
    painter.drawText(QRect(x + wordsWidth + space::hair, row.top(), afterWidth, row.height()),
        Qt::AlignVCenter, after);
}

} // namespace

BlockRibbon::BlockRibbon(
    OpenRoster &roster, LifterHistory &history, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_history(history)
    , m_selection(selection)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
    connect(&selection, &Selection::lifterChanged, this, &BlockRibbon::reload);
    connect(&selection, &Selection::weekChanged, this, &BlockRibbon::reload);
    connect(&history, &LifterHistory::changed, this, &BlockRibbon::reload);
    connect(&roster.today(), &Today::changed, this, &BlockRibbon::reload);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter, core::Card, core::Block>(m_selection.lifter()))
            reload();
    });
    reload();
}

QSize BlockRibbon::sizeHint() const
{
    return {kWeeks * 48, 3 * rowHeight(*this) + 2 * space::hair};
}

void BlockRibbon::reload()
{
    m_ribbon = {};
    m_first = ribbonStart(m_first, kWeeks, m_selection.monday());
    if (const core::Lifter *lifter = m_roster.lifter(m_selection.lifter()))
        m_ribbon = read(*lifter);
    QString said = tr("Block ribbon");
    for (int week = 0; week < int(m_ribbon.weeks.size()); ++week)
        if (m_ribbon.weeks[size_t(week)].monday == m_selection.monday()) {
            said += QStringLiteral(": ") + weekWords(m_ribbon.weeks[size_t(week)]);
            if (const core::Block *block = blockOf(week))
                said += QStringLiteral("; ") + blockWords(*block);
        }
    setAccessibleName(said);
    update();
}

Ribbon BlockRibbon::read(const core::Lifter &lifter) const
{
    const QDate today = m_roster.today().date();
    const std::vector<core::Card> cards =
        m_roster.cards(lifter.id, m_first, m_first.addDays(core::kWeekDays * kWeeks - 1));
    std::vector<core::Card> past; // what is to come has no outcome, and need not be resolved
    std::ranges::copy_if(cards, std::back_inserter(past),
        [monday = core::mondayOf(today)](const core::Card &card) { return card.day < monday; });
    const std::vector<core::ResolvedCard> given =
        core::asGiven(std::move(past), lifter, m_roster.variations(), m_history.given());
    return ribbonOf(m_first, kWeeks, cards, m_roster.blocks(lifter.id), lifter.meetDate, today,
        core::finishedWeeks(
            {given, m_history.sessions(), m_history.checkIns(), m_roster.variations(), today},
            m_first));
}

QRect BlockRibbon::weekRect(int week) const
{
    const int left = width() * week / kWeeks;
    const int right = width() * (week + 1) / kWeeks;
    return {left, 0, right - left, height()};
}

int BlockRibbon::weekAt(QPoint point) const
{
    for (int week = 0; week < int(m_ribbon.weeks.size()); ++week)
        if (weekRect(week).contains(point))
            return week;
    return -1;
}

const core::Block *BlockRibbon::blockOf(int week) const
{
    for (const RibbonBlock &block : m_ribbon.blocks)
        if (week >= block.first && week <= block.last)
            return &block.block;
    return nullptr;
}

bool BlockRibbon::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto *help = static_cast<QHelpEvent *>(event);
        const int week = weekAt(help->pos());
        if (week < 0)
            return true;
        QString words = weekWords(m_ribbon.weeks[size_t(week)]);
        if (const core::Block *block = blockOf(week))
            words = blockWords(*block) + u'\n' + words;
        QToolTip::showText(help->globalPos(), words, this, weekRect(week));
        return true;
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut)
        update();
    return QWidget::event(event);
}

void BlockRibbon::mousePressEvent(QMouseEvent *event)
{
    if (const int week = weekAt(event->pos()); week >= 0 && event->button() == Qt::LeftButton)
        Q_EMIT weekWanted(m_ribbon.weeks[size_t(week)].monday);
}

void BlockRibbon::mouseDoubleClickEvent(QMouseEvent *event)
{
    if (const int week = weekAt(event->pos()); week >= 0 && event->button() == Qt::LeftButton) {
        const core::Block *block = blockOf(week);
        Q_EMIT blockActivated(block ? block->id : core::BlockId{});
    }
}

void BlockRibbon::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        Q_EMIT weekWanted(m_selection.monday().addDays(-core::kWeekDays));
        break;
    case Qt::Key_Right:
        Q_EMIT weekWanted(m_selection.monday().addDays(core::kWeekDays));
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        for (int week = 0; week < int(m_ribbon.weeks.size()); ++week)
            if (m_ribbon.weeks[size_t(week)].monday == m_selection.monday()) {
                const core::Block *block = blockOf(week);
                Q_EMIT blockActivated(block ? block->id : core::BlockId{});
                return;
            }
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void BlockRibbon::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(ui::font(Type::small, font()));
    paintBlocks(painter);
    for (int week = 0; week < int(m_ribbon.weeks.size()); ++week)
        paintWeek(painter, week);
    if (hasFocus()) {
        painter.setPen(QPen(colours(palette()).accent, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(
            QRectF(rect()).adjusted(1, 1, -1, -1), space::radius, space::radius);
    }
}

void BlockRibbon::paintBlocks(QPainter &painter) const
{
    const Colours &look = colours(palette());
    const int height = rowHeight(*this);
    for (const RibbonBlock &block : m_ribbon.blocks) {
        const QRect bar(weekRect(block.first).left() + 1, 0,
            weekRect(block.last).right() - weekRect(block.first).left() - 1, height);
        painter.setPen(look.controlBorder);
        painter.setBrush(look.surface);
        painter.drawRoundedRect(bar, space::radius, space::radius);
        painter.setPen(look.text);
        painter.drawText(bar.adjusted(space::tight, 0, -space::tight, 0),
            Qt::AlignVCenter | Qt::AlignLeft,
            painter.fontMetrics().elidedText(
                block.block.name, Qt::ElideRight, bar.width() - 2 * space::tight));
    }
    if (m_ribbon.blocks.empty() && !m_ribbon.weeks.empty()) {
        painter.setPen(look.mutedText);
        painter.drawText(QRect(0, 0, width(), height), Qt::AlignCenter,
            tr("No block yet: Plan \u25b8 New block, or lay out a template"));
    }
}

void BlockRibbon::paintWeek(QPainter &painter, int index) const
{
    const Colours &look = colours(palette());
    const RibbonWeek &week = m_ribbon.weeks[size_t(index)];
    const int row = rowHeight(*this);
    const QRect cell = weekRect(index).adjusted(1, row + space::hair, -1, 0);
    const bool shown = week.monday == m_selection.monday();
    painter.setPen(shown ? QPen(look.accent, 2.0) : QPen(look.line));
    painter.setBrush(shown ? look.chosen : look.sunken);
    painter.drawRoundedRect(QRectF(cell).adjusted(1, 1, -1, -1), space::radius, space::radius);

    painter.setPen(shown ? look.onChosen : look.text);
    QFont date = ui::font(Type::small, font());
    date.setBold(week.now);
    painter.setFont(date);
    const QRect top(cell.left(), cell.top() + 1, cell.width(), row);
    painter.drawText(top, Qt::AlignCenter, core::dateWords(week.monday, tr("d MMM")));
    painter.setFont(ui::font(Type::small, font()));
    paintBelow(painter, week, top.translated(0, row - space::hair),
        shown ? look.onChosen : look.mutedText);
}

} // namespace ui
