#include "ui/print/sheet_layout.h"

#include "ui/look/text.h"

#include <algorithm>
#include <array>
#include <initializer_list>

namespace ui {

namespace {

constexpr double points(double length)
{
    return length * kTwipsPerPoint;
}

constexpr double kGap = points(3);
constexpr double kFooter = points(16);
/// A row to write into: as high as handwriting wants, or tighter where that saves a page.
constexpr double kRoomyRow = points(17.5);
constexpr double kTightRow = points(15);
constexpr double kNotesRow = points(18);
constexpr double kBulletIndent = points(8);

/// The columns of the sets, from the right edge of the page inwards.
enum Column { set, reps, load, plates, rpe, doneLoad, doneReps, doneRpe, doneTouch, columnCount };
constexpr std::array<double, columnCount> kWidths{points(16), points(44), points(44), points(80),
    points(36), points(44), points(32), points(32), points(32)};

double tableWidth()
{
    double width = 0.0;
    for (const double column : kWidths)
        width += column;
    return width;
}

struct Line
{
    QString text;
    SheetType type = SheetType::body;
};

struct Row
{
    const core::SheetSet *set = nullptr; ///< null for a row that the lifter fills alone
    int number = 1;
    QStringList plates;
    double height = 0.0;
};

double heightOf(const std::vector<Line> &lines)
{
    double height = 0.0;
    for (const Line &line : lines)
        height += lineHeight(line.type);
    return height;
}

/// A line of one of the lists at the end.
struct Item
{
    Line line;
    bool bullet = false; ///< begins an entry
};

double heightOf(const std::vector<Item> &items)
{
    double height = 0.0;
    for (const Item &item : items)
        height += lineHeight(item.line.type);
    return height;
}

double heightOf(const std::vector<Row> &rows)
{
    double height = 0.0;
    for (const Row &row : rows)
        height += row.height;
    return height;
}

/// The first type in which the words are no wider than `width`, else the smallest.
SheetType widestThatFits(const QString &words, std::initializer_list<SheetType> types, double width)
{
    for (const SheetType type : types)
        if (textWidth(words, type) <= width)
            return type;
    return SheetType::small;
}

/// Fills pages from top to bottom.
class SheetSetter
{
public:
    SheetSetter(const core::WeekSheet &sheet, PaperSize paper, double rowHeight)
        : m_sheet(sheet)
        , m_rowHeight(rowHeight)
        , m_area(QRectF(QPointF(0, 0), sizeInTwips(paper))
                     .adjusted(kSheetMargin, kSheetMargin, -kSheetMargin, -kSheetMargin - kFooter))
        , m_tableLeft(m_area.right() - tableWidth())
    {
    }

    std::vector<SheetPage> setAll()
    {
        m_pages.emplace_back();
        m_y = m_area.top();
        setTitle();
        if (m_sheet.days.empty())
            setLines({{Text::tr("No work is planned this week."), SheetType::body}}, m_area.left());
        for (const core::SheetDay &day : m_sheet.days)
            setDay(day);
        setLists();
        setFooters();
        return std::move(m_pages);
    }

private:
    [[nodiscard]] double room() const { return m_area.bottom() - m_y; }

    void text(const QRectF &box, const QString &words, SheetType type,
        Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter)
    {
        if (!words.isEmpty())
            m_pages.back().texts.push_back({box, words, type, align});
    }

    void rule(double y) { m_pages.back().rules.emplace_back(m_area.left(), y, m_area.right(), y); }

    void setLines(const std::vector<Line> &lines, double left)
    {
        for (const Line &line : lines) {
            const double height = lineHeight(line.type);
            text({left, m_y, m_area.right() - left, height}, line.text, line.type);
            m_y += height;
        }
    }

    [[nodiscard]] static std::vector<Line> broken(
        const QString &words, SheetType type, double width)
    {
        std::vector<Line> lines;
        for (const QString &line : brokenLines(words, type, width))
            lines.push_back({line, type});
        return lines;
    }

    void setTitle()
    {
        // The week stands at the right of a name that leaves room for it, else below.
        const double weekWidth = textWidth(m_sheet.week, SheetType::subtitle) + points(8);
        const std::vector<Line> name =
            broken(m_sheet.lifter, SheetType::title, m_area.width() - weekWidth);
        if (name.size() == 1) {
            text({m_area.right() - weekWidth, m_y, weekWidth, lineHeight(SheetType::title)},
                m_sheet.week, SheetType::subtitle, Qt::AlignRight | Qt::AlignVCenter);
            setLines(name, m_area.left());
        } else {
            setLines(broken(m_sheet.lifter, SheetType::title, m_area.width()), m_area.left());
            setLines(broken(m_sheet.week, SheetType::subtitle, m_area.width()), m_area.left());
        }
        setLines(broken(m_sheet.facts.join(Text::tr("; ")), SheetType::body, m_area.width()),
            m_area.left());
        for (const Line &line : stopLines(m_sheet.stops))
            setLines({line}, m_area.left());
        m_y += kGap;
    }

    [[nodiscard]] std::vector<Line> stopLines(const QStringList &stops) const
    {
        std::vector<Line> lines;
        for (const QString &stop : stops)
            std::ranges::copy(
                broken(stop, SheetType::name, m_area.width()), std::back_inserter(lines));
        return lines;
    }

    void turnPage()
    {
        m_pages.emplace_back();
        m_y = m_area.top();
        const double week = m_area.width() * 0.4;
        const QStringList name =
            brokenLines(m_sheet.lifter, SheetType::heading, m_area.width() - week - 4 * kGap);
        const double height = lineHeight(SheetType::heading);
        text({m_area.left(), m_y, m_area.width() - week - kGap, height},
            name.size() > 1 ? name.first() + u'…' : name.value(0), SheetType::heading);
        text({m_area.right() - week, m_y, week, height}, m_sheet.week, SheetType::body,
            Qt::AlignRight | Qt::AlignVCenter);
        m_y += height;
        rule(m_y);
        m_y += kGap;
    }

    void setDay(const core::SheetDay &day)
    {
        const std::vector<Line> stops = stopLines(day.stops);
        const double heading = dayHeadingHeight() + heightOf(stops);
        if (room() < heading + std::min(cardHeight(day.cards.front()), pageHeight() - heading))
            turnPage();
        setDayHeading(day.day);
        for (const Line &line : stops) {
            if (room() < lineHeight(line.type))
                goOverleaf(day);
            setLines({line}, m_area.left());
        }
        for (const core::SheetCard &card : day.cards)
            setCard(day, card);
        setNotes(day);
    }

    void goOverleaf(const core::SheetDay &day)
    {
        turnPage();
        setDayHeading(Text::tr("%1, continued").arg(day.day));
    }

    [[nodiscard]] static double dayHeadingHeight() { return points(17); }
    /// What a page after the first holds below its head.
    [[nodiscard]] double pageHeight() const
    {
        return m_area.height() - lineHeight(SheetType::heading) - kGap;
    }

    void setDayHeading(const QString &words)
    {
        const QRectF bar(m_area.left(), m_y, m_area.width(), dayHeadingHeight());
        m_pages.back().shades.push_back(bar);
        const double width = m_tableLeft - bar.left() - 2 * kGap;
        text({bar.left() + kGap, bar.top(), width, bar.height()}, words,
            widestThatFits(words, {SheetType::heading, SheetType::name}, width));
        const QString labels[columnCount] = {Text::tr("Set"), Text::tr("Reps"),
            Text::tr("Load %1").arg(m_sheet.unit), Text::tr("Plates each side"),
            Text::tr("Exp. RPE"), Text::tr("Did %1").arg(m_sheet.unit), Text::tr("reps"),
            Text::tr("RPE"), Text::tr("touch")};
        double x = m_tableLeft;
        for (int column = 0; column < columnCount; ++column) {
            text({x, bar.top(), kWidths[size_t(column)], bar.height()}, labels[column],
                SheetType::small, Qt::AlignCenter);
            x += kWidths[size_t(column)];
        }
        m_y += bar.height();
    }

    [[nodiscard]] std::vector<Line> linesOf(const core::SheetCard &card) const
    {
        const double width = m_tableLeft - m_area.left() - kGap;
        std::vector<Line> lines;
        const auto add = [&](const QString &words, SheetType type) {
            for (Line &line : broken(words, type, width))
                lines.push_back(std::move(line));
        };
        add(card.variation, SheetType::name);
        QStringList how{card.setLine, card.tempo};
        how.removeAll(QString());
        add(how.join(Text::tr("; ")), SheetType::body);
        for (const QString &effort : card.effort)
            add(effort, SheetType::small);
        for (const QString &held : card.withheld)
            add(Text::tr("Held back: %1").arg(held), SheetType::body);
        for (const QString &lighter : card.lighter)
            add(lighter, SheetType::body);
        add(card.purpose, SheetType::small);
        if (!card.note.isEmpty())
            add(Text::tr("Note: %1").arg(card.note), SheetType::body);
        for (const QString &caution : card.cautions)
            add(Text::tr("Caution: %1").arg(caution), SheetType::small);
        return lines;
    }

    [[nodiscard]] std::vector<Row> rowsOf(const core::SheetCard &card) const
    {
        std::vector<Row> rows;
        for (const core::SheetSet &set : card.sets) {
            Row row{&set, int(rows.size()) + 1, {}, m_rowHeight};
            row.plates = brokenLines(
                doubted(set, set.plates), SheetType::small, kWidths[plates] - points(4));
            row.height = std::max(
                row.height, double(row.plates.size()) * lineHeight(SheetType::small) + points(3));
            rows.push_back(std::move(row));
        }
        if (rows.empty())
            rows.push_back({nullptr, 1, {}, m_rowHeight});
        return rows;
    }

    [[nodiscard]] double cardHeight(const core::SheetCard &card) const
    {
        return std::max(heightOf(linesOf(card)), heightOf(rowsOf(card))) + 2 * kGap;
    }

    void setCard(const core::SheetDay &day, const core::SheetCard &card)
    {
        if (const double height = cardHeight(card);
            height > room() && height <= pageHeight() - dayHeadingHeight())
            goOverleaf(day);

        const std::vector<Line> lines = linesOf(card);
        const std::vector<Row> rows = rowsOf(card);
        auto line = lines.begin();
        auto row = rows.begin();
        for (;;) {
            m_y += kGap;
            double textY = m_y, tableY = m_y;
            for (; line != lines.end(); ++line) {
                const double height = lineHeight(line->type);
                if (textY + height > m_area.bottom())
                    break;
                text({m_area.left(), textY, m_tableLeft - m_area.left() - kGap, height}, line->text,
                    line->type);
                textY += height;
            }
            for (; row != rows.end() && tableY + row->height <= m_area.bottom(); ++row) {
                setRow(*row, tableY);
                tableY += row->height;
            }
            m_y = std::max(textY, tableY);
            if (line == lines.end() && row == rows.end())
                break;
            goOverleaf(day);
        }
        m_y += kGap;
        rule(m_y);
    }

    /// In brackets where the words beside the table hold the set back or name a lighter load.
    [[nodiscard]] static QString doubted(const core::SheetSet &set, const QString &words)
    {
        return words.isEmpty() || !isDoubted(set) ? words : Text::tr("(%1)").arg(words);
    }
    [[nodiscard]] static bool isDoubted(const core::SheetSet &set)
    {
        return !set.values.withheld.isEmpty() || set.values.lighterKg;
    }

    void setRow(const Row &row, double y)
    {
        const core::SheetSet set = row.set ? *row.set : core::SheetSet{};
        const QString words[columnCount] = {QString::number(row.number),
            set.target.isEmpty() ? set.reps : Text::tr("%1  %2").arg(set.reps, set.target),
            doubted(set, set.load), {}, set.rpe, {}, {}, {}, {}};
        double x = m_tableLeft;
        for (int column = 0; column < columnCount; ++column) {
            const QRectF cell(x, y, kWidths[size_t(column)], row.height);
            // Without a load there is a box, so that the coach can write one.
            if (column >= doneLoad || (column == load && set.load.isEmpty()))
                m_pages.back().boxes.push_back(cell.adjusted(0, 0, -points(2), -points(2)));
            text(cell, words[column],
                column == load && !isDoubted(set)             ? SheetType::load
                    : column == Column::set || column == load ? SheetType::small
                                                              : SheetType::body,
                Qt::AlignCenter);
            x += cell.width();
        }
        double lineY =
            y + (row.height - double(row.plates.size()) * lineHeight(SheetType::small)) / 2.0;
        const double platesX = m_tableLeft + kWidths[Column::set] + kWidths[reps] + kWidths[load];
        for (const QString &line : row.plates) {
            text({platesX, lineY, kWidths[plates], lineHeight(SheetType::small)}, line,
                SheetType::small, Qt::AlignCenter);
            lineY += lineHeight(SheetType::small);
        }
    }

    void setNotes(const core::SheetDay &day)
    {
        if (room() < kNotesRow)
            goOverleaf(day);
        text({m_area.left(), m_y, m_area.width(), kNotesRow}, Text::tr("Notes"), SheetType::small);
        m_y += kNotesRow;
        rule(m_y);
        m_y += kGap;
    }

    /// The two lists at the end, side by side; together on one page where they fit on one.
    void setLists()
    {
        const double width = (m_area.width() - 4 * kGap) / 2.0;
        const std::vector<Item> left = itemsOf(Text::tr("What to write"), m_sheet.scales, width);
        const std::vector<Item> right = itemsOf(Text::tr("Take care"), m_sheet.cautions, width);
        const double height = std::max(heightOf(left), heightOf(right));
        if (height > room() && height <= pageHeight())
            turnPage();
        auto l = left.begin(), r = right.begin();
        for (;;) {
            setItems(l, left.end(), m_area.left(), width);
            setItems(r, right.end(), m_area.right() - width, width);
            if (l == left.end() && r == right.end())
                break;
            turnPage();
        }
    }

    [[nodiscard]] static std::vector<Item> itemsOf(
        const QString &heading, const QStringList &entries, double width)
    {
        std::vector<Item> items{{{heading, SheetType::name}, false}};
        for (const QString &entry : entries) {
            bool bullet = true;
            for (Line &line : broken(entry, SheetType::small, width - kBulletIndent)) {
                items.push_back({std::move(line), bullet});
                bullet = false;
            }
        }
        return items;
    }

    /// As many as fit on the page.
    void setItems(std::vector<Item>::const_iterator &item, std::vector<Item>::const_iterator end,
        double left, double width)
    {
        double y = m_y;
        for (; item != end && y + lineHeight(item->line.type) <= m_area.bottom(); ++item) {
            const double height = lineHeight(item->line.type);
            const double indent = item->line.type == SheetType::name ? 0.0 : kBulletIndent;
            if (item->bullet)
                text({left, y, kBulletIndent, height}, QStringLiteral("•"), item->line.type);
            text({left + indent, y, width - indent, height}, item->line.text, item->line.type);
            y += height;
        }
    }

    void setFooters()
    {
        const double y = m_area.bottom() + (kFooter - lineHeight(SheetType::small));
        const QString words = Text::tr("Spotter or safeties, thumbs around the bar. Alone without "
                                       "safeties: no collars. Stop at sharp pain.");
        for (size_t i = 0; i < m_pages.size(); ++i) {
            const QRectF line(m_area.left(), y, m_area.width(), lineHeight(SheetType::small));
            m_pages[i].texts.push_back({line, words, SheetType::small});
            m_pages[i].texts.push_back(
                {line, Text::tr("Page %1 of %2").arg(i + 1).arg(m_pages.size()), SheetType::small,
                    Qt::AlignRight | Qt::AlignVCenter});
        }
    }

    const core::WeekSheet &m_sheet;
    double m_rowHeight;
    QRectF m_area; ///< above the footer
    double m_tableLeft;
    std::vector<SheetPage> m_pages;
    double m_y = 0.0;
};

} // namespace

LaidOutSheet layOut(const core::WeekSheet &sheet, PaperSize paper)
{
    std::vector<SheetPage> roomy = SheetSetter(sheet, paper, kRoomyRow).setAll();
    std::vector<SheetPage> tight = SheetSetter(sheet, paper, kTightRow).setAll();
    return {Text::tr("Plan of %1, %2").arg(sheet.lifter, sheet.week), paper,
        tight.size() < roomy.size() ? std::move(tight) : std::move(roomy)};
}

} // namespace ui
