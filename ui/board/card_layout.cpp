#include "ui/board/card_layout.h"

#include "ui/look/metrics.h"
#include "ui/look/text.h"
#include "ui/look/wrapped_text.h"

#include <QFontMetrics>
#include <algorithm>

namespace ui {

namespace {

constexpr int kPadding = 5;
constexpr int kRowGap = 3;

QFont fontOf(CardText::Role role, const QFont &body)
{
    switch (role) {
    case CardText::Role::name:
    case CardText::Role::load:
        return font(Type::strong, body);
    case CardText::Role::sets:
    case CardText::Role::prompt:
        return font(Type::body, body);
    case CardText::Role::effort:
    case CardText::Role::given:
    case CardText::Role::note:
    case CardText::Role::caution:
        break;
    }
    return font(Type::small, body);
}

/// The font of names, smaller by a step at a time where a word would break else.
QFont nameFont(const QString &name, const QFont &body, int room)
{
    constexpr double kSmallest = 0.8; // of the body's size
    constexpr double kStep = 0.05;
    const QFont strong = fontOf(CardText::Role::name, body);
    QFont font = strong;
    const QStringList words = name.split(u' ');
    const auto breaks = [&](const QString &word) {
        return QFontMetrics(font).horizontalAdvance(word) > room;
    };
    for (double size = 1.0 - kStep;
         size > kSmallest - kStep / 2.0 && std::any_of(words.begin(), words.end(), breaks);
         size -= kStep)
        font = scaled(strong, size);
    return font;
}

/// Lays texts from the top in rows.
class CardRows
{
public:
    CardRows(int width, const QFont &body)
        : m_width(width)
        , m_body(body)
    {
    }

    void addName(const QString &name)
    {
        const int indent = space::mark + space::tight;
        const QFont font = nameFont(name, m_body, m_width - 2 * kPadding - indent);
        const int top = m_y + (QFontMetrics(font).height() - space::mark) / 2;
        m_layout.mark = QRect(kPadding, top, space::mark, space::mark);
        addWrapped(CardText::Role::name, name, font, indent);
    }

    void addWrapped(CardText::Role role, const QString &text)
    {
        addWrapped(role, text, fontOf(role, m_body), 0);
    }

    /// Parts from the left, each on the row of the one before when it fits beside it.
    void addLine(const LineView &line)
    {
        int x = kPadding;
        int rowHeight = 0;
        const std::pair<CardText::Role, QString> parts[] = {{CardText::Role::sets, line.sets},
            {CardText::Role::load, line.load}, {CardText::Role::effort, line.effort}};
        for (const auto &[role, text] : parts) {
            if (text.isEmpty())
                continue;
            const QFont font = fontOf(role, m_body);
            const QFontMetrics metrics(font);
            const int needed = metrics.horizontalAdvance(text) + 1;
            if (x > kPadding && x + needed > m_width - kPadding) {
                m_y += rowHeight + 1;
                x = kPadding;
                rowHeight = 0;
            }
            if (needed > m_width - 2 * kPadding) {
                addWrapped(role, text);
                continue;
            }
            place(role, text, font, QRect(x, m_y, needed, metrics.height()));
            rowHeight = std::max(rowHeight, metrics.height());
            x += needed + space::gap;
        }
        m_y += rowHeight + kRowGap;
    }

    [[nodiscard]] int y() const { return m_y; }
    [[nodiscard]] QRect band(int top, int bottom) const
    {
        return {kPadding, top, m_width - 2 * kPadding, bottom - top};
    }

    CardLayout finished() &&
    {
        m_layout.height = m_y - kRowGap + kPadding;
        return std::move(m_layout);
    }
    CardLayout &layout() { return m_layout; }

private:
    void addWrapped(CardText::Role role, const QString &text, const QFont &font, int indent)
    {
        const int room = m_width - 2 * kPadding - indent;
        const int height = wrappedTextSize(text, font, room).height();
        place(role, text, font, QRect(kPadding + indent, m_y, room, height));
        m_y += height + kRowGap;
    }

    void place(CardText::Role role, const QString &text, const QFont &font, const QRect &rect)
    {
        m_layout.texts.push_back({role, rect, text, font});
    }

    int m_width;
    QFont m_body;
    int m_y = kPadding;
    CardLayout m_layout;
};

} // namespace

CardLayout cardLayout(const CardView &card, int width, const QFont &body)
{
    CardRows rows(width, body);
    rows.addName(card.name);
    const int setsTop = rows.y();
    for (const LineView &line : card.lines)
        rows.addLine(line);
    if (card.lines.empty())
        rows.addWrapped(CardText::Role::prompt, Text::tr("type the sets, such as 4x3 @8"));
    rows.layout().setsField = rows.band(setsTop, rows.y() - kRowGap);
    for (const QString &fact : {card.given, card.done})
        if (!fact.isEmpty())
            rows.addWrapped(CardText::Role::given, fact);
    const int noteTop = rows.y();
    if (!card.note.isEmpty())
        rows.addWrapped(CardText::Role::note, card.note);
    rows.layout().noteField = rows.band(noteTop, std::max(rows.y() - kRowGap, noteTop));
    if (!card.caution.isEmpty())
        rows.addWrapped(CardText::Role::caution, card.caution);
    return std::move(rows).finished();
}

} // namespace ui
