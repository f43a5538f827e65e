#include "ui/look/field_note.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QEvent>

namespace ui {

FieldNote::FieldNote(Kind kind, const QString &text)
    : WrappedLabel(text)
    , m_kind(kind)
{
    setFont(ui::font(Type::small, font()));
    recolour();
    if (text.isEmpty())
        hide();
}

void FieldNote::setKind(Kind kind)
{
    m_kind = kind;
    recolour();
}

void FieldNote::say(const QString &text)
{
    setText(text);
    setVisible(!text.isEmpty());
}

void FieldNote::changeEvent(QEvent *event)
{
    WrappedLabel::changeEvent(event);
    // recolour() itself ends here too, and then finds nothing left to set.
    if (event->type() == QEvent::PaletteChange)
        recolour();
}

void FieldNote::recolour()
{
    const Colours &c = colours(palette());
    const QColor wanted = m_kind == Kind::problem ? c.dangerText
        : m_kind == Kind::caution                 ? c.cautionText
                                                  : c.mutedText;
    if (palette().color(QPalette::WindowText) == wanted)
        return;
    QPalette own; // one role only, so that the others go on following the scheme
    own.setColor(QPalette::WindowText, wanted);
    setPalette(own);
}

FieldNote *explain(const QString &words)
{
    return new FieldNote(FieldNote::Kind::explanation, words);
}

} // namespace ui
