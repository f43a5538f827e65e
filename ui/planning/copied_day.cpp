#include "ui/planning/copied_day.h"

#include "ui/look/text.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>
#include <algorithm>

namespace ui {

namespace {
const QString kFrom = QStringLiteral("application/x-benchwright-day-of"); ///< a lifter's name
}

void copyDay(const QString &cards, const core::Lifter &lifter)
{
    auto *mime = new QMimeData; // the clipboard's
    mime->setText(cards);
    // By name, which is unique in a roster: another window may hold another one.
    mime->setData(kFrom, lifter.name.toUtf8());
    QGuiApplication::clipboard()->setMimeData(mime);
}

CopiedDay copiedDay(
    const std::vector<core::Variation> &catalogue, const std::vector<core::Lifter> &lifters)
{
    const QMimeData *mime = QGuiApplication::clipboard()->mimeData();
    core::ParsedCardText parsed = core::parseCardText(mime ? mime->text() : QString(), catalogue);
    CopiedDay day;
    if (parsed.error)
        day.refused = Text::tr("The clipboard cannot be read as cards. Line %1, column %2: %3")
                          .arg(parsed.error->line)
                          .arg(parsed.error->column)
                          .arg(parsed.error->words);
    else if (parsed.rows.empty())
        day.refused = Text::tr("No day is copied yet: go to one that has cards, and copy it.");
    day.rows = std::move(parsed.rows);
    const QString name = mime ? QString::fromUtf8(mime->data(kFrom)) : QString();
    const auto owner = std::ranges::find(lifters, name, &core::Lifter::name);
    if (owner != lifters.end())
        day.from = owner->id;
    return day;
}

} // namespace ui
