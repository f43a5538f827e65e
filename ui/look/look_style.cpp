#include "ui/look/look_style.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QPainter>
#include <QPainterPath>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <algorithm>

namespace ui {

namespace {

constexpr int kRowPadding = 6;
constexpr int kTextInset = 4;       ///< between a field's edge and its text, besides Fusion's own
constexpr int kWidestControl = 400; ///< that its text alone can ask for, whatever a coach wrote
constexpr double kFocusWidth = 2.0;

/// Draws a rounded box with its edge inside `rect`.
void box(QPainter *painter, const QRect &rect, const QColor &fill, const QColor &edge, double width)
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setBrush(fill);
    painter->setPen(width > 0 ? QPen(edge, width) : QPen(Qt::NoPen));
    const double inset = width / 2;
    painter->drawRoundedRect(
        QRectF(rect).adjusted(inset, inset, -inset, -inset), space::radius, space::radius);
    painter->restore();
}

/// Dots in place of what has no room; ElidedTips says it in full.
QString elided(const QString &text, const QStyleOption &option, const QRect &room)
{
    if (option.fontMetrics.size(Qt::TextShowMnemonic, text).width() <= room.width())
        return text;
    return option.fontMetrics.elidedText(text, Qt::ElideRight, room.width(), Qt::TextShowMnemonic);
}

void fieldBox(QPainter *painter, const QStyleOption *option)
{
    const Colours &c = colours(option->palette);
    const bool enabled = option->state & QStyle::State_Enabled;
    const bool focused = enabled && option->state & QStyle::State_HasFocus;
    box(painter, option->rect, enabled ? c.surface : c.sunken,
        focused       ? c.accent
            : enabled ? c.controlBorder
                      : c.line,
        focused ? kFocusWidth : 1.0);
}

void buttonBox(QPainter *painter, const QStyleOption *option)
{
    const Colours &c = colours(option->palette);
    const bool enabled = option->state & QStyle::State_Enabled;
    const bool pressed = option->state & (QStyle::State_Sunken | QStyle::State_On);
    const bool hovered = option->state & QStyle::State_MouseOver;
    const bool focused = enabled && option->state & QStyle::State_HasFocus;
    const auto *button = qstyleoption_cast<const QStyleOptionButton *>(option);
    const bool next = enabled && button && button->features & QStyleOptionButton::DefaultButton;

    QColor fill = enabled ? c.surface : c.sunken;
    if (pressed)
        fill = c.chosen;
    else if (next)
        fill = c.accent;
    else if (enabled && hovered)
        fill = c.sunken;
    box(painter, option->rect, fill,
        next || focused ? c.accent
            : enabled   ? c.controlBorder
                        : c.line,
        1.0);
    if (focused && next) // the accent's own edge would not show: a ring inside it
        box(painter, option->rect.adjusted(2, 2, -2, -2), Qt::transparent, c.onAccent, 1.0);
    else if (focused)
        box(painter, option->rect, Qt::transparent, c.accent, kFocusWidth);
}

/// Edge and fill of a check box or radio button.
struct Indicator
{
    QColor edge;
    QColor fill;
    QColor sign;
    bool set = false; ///< on, or partly
};

Indicator indicator(const QStyleOption *option)
{
    const Colours &c = colours(option->palette);
    const bool set = option->state & (QStyle::State_On | QStyle::State_NoChange);
    if (!(option->state & QStyle::State_Enabled))
        return {c.line, c.sunken, c.mutedText, set};
    return {set ? c.accent : c.controlBorder, set ? c.accent : c.surface, c.onAccent, set};
}

void checkBox(QPainter *painter, const QStyleOption *option)
{
    const Indicator look = indicator(option);
    box(painter, option->rect, look.fill, look.edge, 1.0);
    if (!look.set)
        return;
    const QRectF r(option->rect);
    const auto at = [&r](double x, double y) {
        return QPointF(r.left() + x * r.width(), r.top() + y * r.height());
    };
    QPainterPath sign;
    if (option->state & QStyle::State_NoChange) {
        sign.moveTo(at(0.25, 0.5));
        sign.lineTo(at(0.75, 0.5));
    } else {
        sign.moveTo(at(0.22, 0.52));
        sign.lineTo(at(0.42, 0.72));
        sign.lineTo(at(0.78, 0.3));
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->strokePath(sign, QPen(look.sign, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->restore();
}

void radioButton(QPainter *painter, const QStyleOption *option)
{
    const Indicator look = indicator(option);
    constexpr double kPen = 1.6; // a curve of one pixel pales where it is smoothed
    const QRectF r = QRectF(option->rect).adjusted(kPen / 2, kPen / 2, -kPen / 2, -kPen / 2);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(look.edge, kPen));
    painter->setBrush(look.fill);
    painter->drawEllipse(r);
    if (look.set) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(look.sign);
        painter->drawEllipse(r.center(), r.width() * 0.22, r.height() * 0.22);
    }
    painter->restore();
}

} // namespace

LookStyle::LookStyle()
    : QProxyStyle(QStringLiteral("Fusion"))
{
}

int LookStyle::pixelMetric(
    PixelMetric metric, const QStyleOption *option, const QWidget *widget) const
{
    switch (metric) {
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
        return space::gap;
    case PM_LayoutLeftMargin:
    case PM_LayoutTopMargin:
    case PM_LayoutRightMargin:
    case PM_LayoutBottomMargin:
        return 12;
    case PM_SplitterWidth:
        return 6;
    case PM_SmallIconSize:
        return 16;
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int LookStyle::styleHint(
    StyleHint hint, const QStyleOption *option, const QWidget *widget, QStyleHintReturn *data) const
{
    switch (hint) {
    case SH_FormLayoutLabelAlignment:
        return Qt::AlignLeft | Qt::AlignTop;
    case SH_UnderlineShortcut:
        return 1;
    case SH_EtchDisabledText:
        return 0;
    default:
        return QProxyStyle::styleHint(hint, option, widget, data);
    }
}

QSize LookStyle::sizeFromContents(
    ContentsType type, const QStyleOption *option, const QSize &size, const QWidget *widget) const
{
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
    case CT_PushButton:
        result.setWidth(std::min(result.width() + space::gap, kWidestControl));
        result.setHeight(std::max(result.height(), space::field));
        break;
    case CT_ComboBox:
        result.setWidth(std::min(result.width(), kWidestControl));
        [[fallthrough]];
    case CT_LineEdit:
        result.setHeight(std::max(result.height(), space::field));
        break;
    case CT_SpinBox: // holds a line edit, which is as tall as a field already
        result.setHeight(std::max(size.height(), space::field));
        break;
    case CT_ItemViewItem:
        result.rheight() += kRowPadding;
        break;
    case CT_TabBarTab:
        result += QSize(space::group, kRowPadding);
        break;
    default:
        break;
    }
    return result;
}

QRect LookStyle::subElementRect(
    SubElement element, const QStyleOption *option, const QWidget *widget) const
{
    const QRect rect = QProxyStyle::subElementRect(element, option, widget);
    const auto *frame = qstyleoption_cast<const QStyleOptionFrame *>(option);
    if (element == SE_LineEditContents && frame && frame->lineWidth > 0)
        return rect.adjusted(kTextInset, 0, -kTextInset, 0);
    return rect;
}

void LookStyle::drawPrimitive(PrimitiveElement element, const QStyleOption *option,
    QPainter *painter, const QWidget *widget) const
{
    const Colours &c = colours(option->palette);
    switch (element) {
    case PE_PanelButtonCommand:
        buttonBox(painter, option);
        return;
    case PE_FrameLineEdit:
        return; // drawn with its panel
    case PE_PanelLineEdit: {
        const auto *frame = qstyleoption_cast<const QStyleOptionFrame *>(option);
        if (frame && frame->lineWidth > 0)
            fieldBox(painter, option);
        else
            painter->fillRect(option->rect, option->palette.brush(QPalette::Base));
        return;
    }
    case PE_IndicatorCheckBox:
        checkBox(painter, option);
        return;
    case PE_IndicatorRadioButton:
        radioButton(painter, option);
        return;
    case PE_Frame: {
        painter->save();
        const bool focused = option->state & State_HasFocus;
        const bool typedInto = qobject_cast<const QPlainTextEdit *>(widget);
        painter->setPen(focused ? c.accent : typedInto ? c.controlBorder : c.line);
        painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
        painter->restore();
        return;
    }
    case PE_FrameTabWidget:
        painter->fillRect(QRect(option->rect.topLeft(), QSize(option->rect.width(), 1)), c.line);
        return;
    case PE_FrameTabBarBase:
        return;
    case PE_FrameFocusRect:
        box(painter, option->rect, Qt::transparent, c.accent, 1.5);
        return;
    case PE_FrameGroupBox:
        painter->fillRect(QRect(option->rect.topLeft(), QSize(option->rect.width(), 1)), c.line);
        return;
    default:
        QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void LookStyle::drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
    const QWidget *widget) const
{
    const Colours &c = colours(option->palette);
    if (element == CE_TabBarTabShape) {
        const bool chosen = option->state & State_Selected;
        const bool hovered = option->state & State_MouseOver;
        if (chosen || hovered) {
            QRect underline = option->rect;
            underline.setTop(underline.bottom() - 2);
            painter->fillRect(underline, chosen ? c.accent : c.line);
        }
        return;
    }
    if (element == CE_PushButtonLabel) {
        const auto *button = qstyleoption_cast<const QStyleOptionButton *>(option);
        if (!button)
            return;
        QStyleOptionButton fitted = *button;
        fitted.text =
            elided(button->text, *button, subElementRect(SE_PushButtonContents, button, widget));
        const bool next = button->features & QStyleOptionButton::DefaultButton
            && button->state & State_Enabled && !(button->state & (State_Sunken | State_On));
        if (next)
            fitted.palette.setColor(QPalette::ButtonText, c.onAccent);
        QProxyStyle::drawControl(element, &fitted, painter, widget);
        return;
    }
    if (const auto *choice = qstyleoption_cast<const QStyleOptionComboBox *>(option);
        choice && element == CE_ComboBoxLabel) {
        QStyleOptionComboBox fitted = *choice;
        fitted.currentText = elided(choice->currentText, *choice,
            subControlRect(CC_ComboBox, choice, SC_ComboBoxEditField, widget));
        QProxyStyle::drawControl(element, &fitted, painter, widget);
        return;
    }
    if (const auto *header = qstyleoption_cast<const QStyleOptionHeader *>(option);
        header && element == CE_HeaderLabel) {
        QStyleOptionHeader fitted = *header;
        fitted.text = elided(header->text, *header, header->rect);
        QProxyStyle::drawControl(element, &fitted, painter, widget);
        return;
    }
    if (element == CE_HeaderSection) {
        painter->fillRect(option->rect, c.window);
        const QRect r = option->rect;
        painter->fillRect(QRect(r.left(), r.bottom(), r.width(), 1), c.line);
        return;
    }
    if (element == CE_Splitter)
        return; // the gap itself is the handle; the cursor tells
    QProxyStyle::drawControl(element, option, painter, widget);
}

void LookStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex *option,
    QPainter *painter, const QWidget *widget) const
{
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    const auto *combo = qstyleoption_cast<const QStyleOptionComboBox *>(option);
    const bool isField = control == CC_SpinBox || (control == CC_ComboBox && combo->editable);
    if (!isField || !(option->state & State_Enabled))
        return;
    // Fusion's own edge is too faint for a control.
    const Colours &c = colours(option->palette);
    const bool focused = option->state & State_HasFocus;
    box(painter, option->rect, Qt::transparent, focused ? c.accent : c.controlBorder,
        focused ? kFocusWidth : 1.0);
}

} // namespace ui
