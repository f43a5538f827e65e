#include "ui/charts/value_box.h"

#include "ui/charts/plot_map.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"

namespace ui {

ValueBox::ValueBox(QWidget *parent)
{
    setParent(parent);
    setObjectName(QStringLiteral("valueBox"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAutoFillBackground(true);
    setFrameShape(QFrame::Box);
    setMargin(space::tight);
    hide();
}

void ValueBox::showBeside(const QPointF &at, const QString &words)
{
    setWordWrap(false);
    setText(words);
    const QRect room = parentWidget()->rect();
    QSize size = sizeHint();
    if (size.width() > room.width()) {
        setWordWrap(true);
        size = {room.width(), heightForWidth(room.width())};
    }
    setGeometry(placeBeside(at, size, room).toRect());
    show();
    raise();
}

void ValueBox::applyLook(const QPalette &ofChart)
{
    const Colours &look = colours(ofChart);
    QPalette own = ofChart;
    own.setColor(QPalette::Window, look.surface);
    own.setColor(QPalette::WindowText, look.text);
    setPalette(own);
}

} // namespace ui
