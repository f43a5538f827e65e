#include "tests/ui/fit/misfits.h"

#include "tests/ui/tour/painted_text.h"

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLayout>
#include <QLineEdit>
#include <QMetaProperty>
#include <QPlainTextEdit>
#include <QPointer>
#include <QProgressBar>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTextEdit>
#include <QToolTip>

namespace tests {

namespace {

constexpr double kHair = 2.0; ///< of a letter's edge, which may stand over its advance

QString nameOf(const QWidget &widget)
{
    QString name = QString::fromLatin1(widget.metaObject()->className());
    if (!widget.objectName().isEmpty())
        name += u' ' + widget.objectName();
    if (const QWidget *parent = widget.parentWidget(); parent && !widget.isWindow())
        name += QStringLiteral(" in ") + QString::fromLatin1(parent->metaObject()->className());
    return name;
}

/// The area that scrolls the widget, where it is such an area's viewport.
QAbstractScrollArea *areaOf(const QWidget &viewport)
{
    auto *area = qobject_cast<QAbstractScrollArea *>(viewport.parentWidget());
    return area && area->viewport() == &viewport ? area : nullptr;
}

/// Text in it is scrolled by the cursor, or drawn in two colours that are clipped.
bool isMeasuredElsewhere(QWidget &widget)
{
    if (qobject_cast<QProgressBar *>(&widget))
        return true;
    if (const auto *field = qobject_cast<QLineEdit *>(&widget))
        return !field->text().isEmpty() && !qobject_cast<QAbstractSpinBox *>(field->parentWidget());
    const QAbstractScrollArea *area = areaOf(widget);
    return qobject_cast<const QPlainTextEdit *>(area) || qobject_cast<const QTextEdit *>(area);
}

QString tipAt(QWidget &widget, const QPoint &at)
{
    QToolTip::hideText();
    QHelpEvent asked(QEvent::ToolTip, at, widget.mapToGlobal(at));
    QApplication::sendEvent(&widget, &asked);
    const QString tip = QToolTip::text();
    QToolTip::hideText();
    return tip;
}

/// What the widget has to say at the place, in full.
QString sourceAt(const QWidget &widget, const QPoint &at)
{
    QStringList said;
    const QMetaObject &kind = *widget.metaObject();
    for (int i = 0; i < kind.propertyCount(); ++i)
        if (kind.property(i).metaType() == QMetaType::fromType<QString>())
            said << kind.property(i).read(&widget).toString();
    if (const auto *tabs = qobject_cast<const QTabBar *>(&widget))
        said << tabs->tabText(tabs->tabAt(at));
    const QAbstractScrollArea *area = areaOf(widget);
    if (const auto *header = qobject_cast<const QHeaderView *>(area); header && header->model())
        said << header->model()
                    ->headerData(header->logicalIndexAt(at), header->orientation())
                    .toString();
    else if (const auto *view = qobject_cast<const QAbstractItemView *>(area))
        said << view->indexAt(at).data().toString();
    for (const QAction *action : widget.actions())
        said << action->text();
    return said.join(u'\n').remove(u'&');
}

class Measure
{
public:
    QStringList found;

    void take(QWidget &widget)
    {
        m_widget = &widget;
        measurePlace();
        if (widget.layout())
            measureDistance(*widget.layout());
        if (const auto *area = qobject_cast<QScrollArea *>(&widget); area && area->widget())
            measureReach(*area);
        if (!isMeasuredElsewhere(widget))
            for (const PaintedLine &line : paintedLines(widget, {}))
                measureText(line);
    }

private:
    void miss(const QString &what) { found << nameOf(*m_widget) + QStringLiteral(": ") + what; }

    void measurePlace()
    {
        const QWidget *parent = m_widget->parentWidget();
        if (m_widget->isWindow() || !parent || areaOf(*parent) || m_widget->size().isEmpty())
            return;
        if (!parent->rect().contains(m_widget->geometry()))
            miss(QStringLiteral("lies at %1 outside of %2 x %3")
                     .arg(words(m_widget->geometry()))
                     .arg(parent->width())
                     .arg(parent->height()));
    }

    /// What a layout has put beside each other does not lie over each other.
    void measureDistance(const QLayout &layout)
    {
        QWidgetList beside;
        collect(layout, beside);
        for (qsizetype i = 0; i < beside.size(); ++i)
            for (qsizetype j = 0; j < i; ++j)
                if (beside[i]->geometry().intersects(beside[j]->geometry()))
                    miss(QStringLiteral("%1 at %2 lies over %3 at %4")
                             .arg(nameOf(*beside[i]), words(beside[i]->geometry()),
                                 nameOf(*beside[j]), words(beside[j]->geometry())));
    }

    static void collect(const QLayout &layout, QWidgetList &widgets)
    {
        for (int i = 0; i < layout.count(); ++i) {
            QLayoutItem *item = layout.itemAt(i);
            if (QWidget *widget = item->widget(); widget && widget->isVisible())
                widgets << widget;
            else if (const QLayout *inner = item->layout())
                collect(*inner, widgets);
        }
    }

    void measureReach(const QScrollArea &area)
    {
        const QSize over = area.widget()->size() - area.viewport()->size();
        if ((over.width() > 0 && area.horizontalScrollBar()->maximum() < over.width())
            || (over.height() > 0 && area.verticalScrollBar()->maximum() < over.height())
            || (over.width() > 0 && area.horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff))
            miss(QStringLiteral("%1 x %2 of its page cannot be reached")
                     .arg(over.width())
                     .arg(over.height()));
    }

    void measureText(const PaintedLine &line)
    {
        const QString text = line.text.trimmed();
        if (text.isEmpty())
            return;
        if (isCut(line))
            miss(QStringLiteral("cuts \"%1\" at %2 (clip %3) of %4 x %5")
                     .arg(text.left(60), words(line.rect), words(line.clip))
                     .arg(m_widget->width())
                     .arg(m_widget->height()));
        const QPoint at = line.rect.center().toPoint();
        const bool isElided =
            text.contains(u'…') || (text.endsWith(QStringLiteral("...")) && text.size() > 3);
        if (isElided && !sourceAt(*m_widget, at).contains(text) && tipAt(*m_widget, at).isEmpty())
            miss(QStringLiteral("elides \"%1\" without a tip").arg(text.left(60)));
    }

    [[nodiscard]] bool isCut(const PaintedLine &line) const
    {
        QRectF room = m_widget->rect();
        if (areaOf(*m_widget)) { // what can be scrolled to
            if (scrollsSideways())
                room.adjust(-1e6, 0, 1e6, 0);
            if (!qobject_cast<const QHeaderView *>(areaOf(*m_widget)))
                room.adjust(0, -1e6, 0, 1e6);
        }
        if (!line.clip.isNull() && !isAtTheEdge(line.clip))
            room &= line.clip;
        const double low = line.rect.height() / 4.0; // the room for accents and tails may be short
        return line.rect.left() < room.left() - kHair || line.rect.right() > room.right() + kHair
            || line.rect.top() + low < room.top() || line.rect.bottom() - low > room.bottom();
    }

    /// A header is scrolled by its table.
    [[nodiscard]] bool scrollsSideways() const
    {
        const QAbstractScrollArea *area = areaOf(*m_widget);
        if (const auto *header = qobject_cast<const QHeaderView *>(area))
            area = qobject_cast<const QAbstractScrollArea *>(header->parentWidget());
        return area && area->horizontalScrollBar()->maximum() > 0;
    }

    /// Whether what clips is the edge of what can be scrolled.
    [[nodiscard]] bool isAtTheEdge(const QRectF &clip) const
    {
        return scrollsSideways() && (clip.left() <= 0.0 || clip.right() >= m_widget->width() - 1.0);
    }

    static QString words(const QRectF &rect)
    {
        return rect.isNull() ? QStringLiteral("none")
                             : QStringLiteral("%1..%2, %3..%4")
                                   .arg(rect.left(), 0, 'f', 0)
                                   .arg(rect.right(), 0, 'f', 0)
                                   .arg(rect.top(), 0, 'f', 0)
                                   .arg(rect.bottom(), 0, 'f', 0);
    }

    QWidget *m_widget = nullptr;
};

} // namespace

QStringList misfits(QWidget &root)
{
    Measure measure;
    QList<QPointer<QWidget>> all{&root}; // asking for a tip may close a tip
    for (QWidget *widget : root.findChildren<QWidget *>())
        all << widget;
    for (const QPointer<QWidget> &widget : all)
        if (widget && widget->isVisible() && (widget == &root || widget->window() == root.window()))
            measure.take(*widget);
    return measure.found;
}

} // namespace tests
